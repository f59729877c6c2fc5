package thrumwright.app;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * The terminal as UTF-8 whatever the locale says: ½, × and ☐ must come out. A name or title that holds signs by which
 * terminals are steered is shown with a mark in their place: a file from somewhere can't clear the screen or ring the bell.
 */
final class Terminal extends PrintStream {
    /** What is a control character, and steers no terminal. */
    private static final String PLAIN = "\t\n\r";

    Terminal(OutputStream out) {
        super(out, true, StandardCharsets.UTF_8);
    }

    @Override
    public void print(String text) {
        super.print(text == null ? null : shown(text));
    }

    /** Sign by sign: to make a pattern takes a third of all that {@code --version} does. */
    private static String shown(String text) {
        StringBuilder shown = new StringBuilder(text);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isISOControl(c) && PLAIN.indexOf(c) < 0) {
                shown.setCharAt(i, '\uFFFD');
            }
        }
        return shown.toString();
    }

    @Override
    public void println(String text) {
        synchronized (this) {
            print(text);
            println();
        }
    }
}
