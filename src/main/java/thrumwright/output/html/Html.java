package thrumwright.output.html;

import java.util.Base64;
import thrumwright.output.page.Markup;

/** Writes HTML, line by line; texts are always escaped. */
final class Html {
    private final StringBuilder text = new StringBuilder();

    /** A PNG and how wide it is shown. */
    record Embedded(byte[] png, int width, int height) {}

    void raw(String markup) {
        text.append(markup);
    }

    void line(String element, String content) {
        line(element, "", content);
    }

    void line(String element, String kind, String content) {
        text.append(begin(element, kind)).append(Markup.escaped(content)).append(end(element));
    }

    /** A line with a box to tick. */
    void ticked(String element, String content) {
        text.append(begin(element, ""))
                .append("<label><input type=\"checkbox\"/>")
                .append(Markup.escaped(content))
                .append("</label>")
                .append(end(element));
    }

    void within(String element, String kind, Runnable content) {
        text.append(begin(element, kind)).append('\n');
        content.run();
        text.append(end(element));
    }

    void picture(Embedded picture, String says) {
        picture(picture, says, "");
    }

    void picture(Embedded picture, String says, String caption) {
        within("figure", "", () -> {
            text.append("<img alt=\"").append(Markup.escaped(says));
            text.append("\" width=\"").append(picture.width());
            text.append("\" height=\"").append(picture.height());
            text.append("\" src=\"data:image/png;base64,");
            text.append(Base64.getEncoder().encodeToString(picture.png())).append("\"/>\n");
            if (!caption.isEmpty()) {
                line("figcaption", caption);
            }
        });
    }

    private static String begin(String element, String kind) {
        return kind.isEmpty() ? "<" + element + ">" : "<" + element + " class=\"" + kind + "\">";
    }

    private static String end(String element) {
        return "</" + element + ">\n";
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
