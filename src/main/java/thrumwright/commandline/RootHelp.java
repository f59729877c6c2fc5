package thrumwright.commandline;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.Help.Ansi;

/**
 * The help of the whole program, laid out beforehand: to lay it out, the parser has to look at every command, which takes
 * several times as long as to print it. {@code RootHelpTest} holds it against what the parser says, and lays it out anew.
 */
final class RootHelp {
    /** Beside this class. */
    static final String LAID_OUT = "help.txt";

    /** Stands there for the sign that begins a change of the type's look, and is to be seen where that one isn't. */
    static final char SHOWN_ESCAPE = '␛';

    private static final char ESCAPE = '\u001B';

    private RootHelp() {}

    /** In UTF-8; with bold names where the terminal shows them. */
    static byte[] bytes() {
        return text(Ansi.AUTO.enabled()).getBytes(StandardCharsets.UTF_8);
    }

    /** @param styled whether names stand out */
    static String text(boolean styled) {
        String laidOut = laidOut().replace("\n", System.lineSeparator());
        return styled ? laidOut.replace(SHOWN_ESCAPE, ESCAPE) : plain(laidOut);
    }

    private static String laidOut() {
        try (InputStream in = RootHelp.class.getResourceAsStream(LAID_OUT)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A change of look ends with m. */
    private static String plain(String styled) {
        StringBuilder plain = new StringBuilder();
        int done = 0;
        for (int at = styled.indexOf(SHOWN_ESCAPE); at >= 0; at = styled.indexOf(SHOWN_ESCAPE, done)) {
            plain.append(styled, done, at);
            done = styled.indexOf('m', at) + 1;
        }
        return plain.append(styled, done, styled.length()).toString();
    }
}
