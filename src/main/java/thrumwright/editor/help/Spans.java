package thrumwright.editor.help;

import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands within a line: bold and slanted words, code, links and pictures. Only what travels along is linked and shown;
 * nothing is ever fetched.
 *
 * @param picture the attributes of a picture, by where it is
 */
record Spans(UnaryOperator<String> picture) {
    private static final Pattern PLACE = Pattern.compile("&lt;a id=\"([^\"]+)\"&gt;&lt;/a&gt;");
    private static final Pattern PICTURE = Pattern.compile("!\\[([^\\]]*)]\\(([^):\\s]+)\\)");
    private static final Pattern LINK = Pattern.compile("\\[([^\\]]+)]\\(([^):\\s]+)\\)");
    private static final Pattern ABROAD = Pattern.compile("\\[([^\\]]+)]\\([^)]*\\)");
    private static final Pattern BOLD = Pattern.compile("\\*\\*([^*]+)\\*\\*");
    private static final Pattern SLANTED = Pattern.compile("\\*([^*\\s][^*]*)\\*");

    String html(String line) {
        StringBuilder html = new StringBuilder();
        boolean code = false;
        for (String part : escaped(line).split("`", -1)) {
            html.append(code ? "<code>" + part + "</code>" : words(part));
            code = !code;
        }
        return html.toString();
    }

    private String words(String part) {
        String pictured = PICTURE.matcher(part)
                .replaceAll(found -> Matcher.quoteReplacement("<img src=\"" + found.group(2) + "\" alt=\""
                        + found.group(1) + "\" " + picture.apply(found.group(2)) + ">"));
        String linked = LINK.matcher(pictured).replaceAll("<a href=\"$2\">$1</a>");
        String local = ABROAD.matcher(linked).replaceAll("$1");
        String placed = PLACE.matcher(local).replaceAll("<a name=\"$1\"></a>");
        return SLANTED.matcher(BOLD.matcher(placed).replaceAll("<b>$1</b>")).replaceAll("<i>$1</i>");
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** By which a link finds a heading. */
    static String anchor(String heading) {
        return heading.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N} -]", "")
                .strip()
                .replace(' ', '-');
    }
}
