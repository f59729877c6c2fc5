package thrumwright.weaver;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a browser shows of a sheet, with what an eye sees of its headings and boxes put as in the text form. Cautions are left
 * out: they ask nothing of the cloth.
 */
final class HtmlWords {
    private static final Pattern SHOWN = Pattern.compile(
            "<(h1|h2|h3|p|li|dd|dt|td)\\b(?![^>]*careful)[^>]*>(.*?)</\\1>|<ul class=\"(rows)\">|(</ul>)",
            Pattern.DOTALL);

    private final StringBuilder text = new StringBuilder();
    private boolean rows;
    private String name = "";

    private HtmlWords() {}

    static String of(String html) {
        HtmlWords words = new HtmlWords();
        Matcher shown = SHOWN.matcher(html);
        while (shown.find()) {
            words.met(shown);
        }
        return words.text.toString();
    }

    private void met(Matcher shown) {
        if (shown.group(1) == null) {
            rows = shown.group(3) != null;
            return;
        }
        String said = plain(shown.group(2));
        switch (shown.group(1)) {
            case "h2" -> line(said + "\n" + "-".repeat(said.length()));
            case "h3" -> line("\u2610 " + said);
            case "li" -> line(rows ? "     \u2610 " + said : "  " + said);
            case "dt" -> name = said;
            case "dd" -> line(name + ": " + said);
            default -> line("     " + said);
        }
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    private static String plain(String html) {
        return html.replaceAll("<[^>]*>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
