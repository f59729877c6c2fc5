package thrumwright.output.page;

/** Text within HTML or XML. */
public final class Markup {
    private Markup() {}

    /** A text in which nothing is taken for markup. */
    public static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
