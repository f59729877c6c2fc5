package thrumwright.output.page;

import java.util.regex.Pattern;

/** Text within HTML or XML. */
public final class Markup {
    /** What no XML 1.0 document may hold: signs that steer, half characters, and the two that are none. */
    private static final Pattern NO_CHARACTER =
            Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

    private Markup() {}

    /** A text with a mark in place of every character that XML can't hold. */
    public static String plain(String text) {
        return NO_CHARACTER.matcher(text).replaceAll("\uFFFD");
    }

    /** A text in which nothing is taken for markup, and nothing makes the document ill-formed. */
    public static String escaped(String text) {
        return plain(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
