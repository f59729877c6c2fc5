package thrumwright.editor;

/** Texts for labels that break their lines. */
final class Html {
    private Html() {}

    /** A plain text with nothing in it that would be taken for markup. */
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    /** Markup that breaks its lines at a width in pixels at 100 %. */
    static String lines(int width, String markup) {
        return "<html><body style='width:" + width + "px'>" + markup;
    }
}
