package thrumwright.app;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * The terminal as UTF-8 whatever the locale says: ½, × and ☐ must come out. A name or title that holds signs by which
 * terminals are steered is shown with a mark in their place: a file from somewhere can't clear the screen or ring the bell.
 */
final class Terminal extends PrintStream {
    /** All control characters but the tab and the ends of lines. */
    private static final Pattern STEERING = Pattern.compile("[\\p{Cc}&&[^\\t\\n\\r]]");

    Terminal(OutputStream out) {
        super(out, true, StandardCharsets.UTF_8);
    }

    @Override
    public void print(String text) {
        super.print(text == null ? null : STEERING.matcher(text).replaceAll("\uFFFD"));
    }

    @Override
    public void println(String text) {
        synchronized (this) {
            print(text);
            println();
        }
    }
}
