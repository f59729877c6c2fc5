package thrumwright.editor.help;

import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A page of the docs as HTML; of Markdown it knows what the docs use, a line at a time. */
final class Markdown {
    private static final Pattern HEADING = Pattern.compile("(#{1,4}) +(.*)");
    private static final Pattern ITEM = Pattern.compile("(- |\\d+\\. )(.*)");
    private static final Pattern RULED = Pattern.compile("\\|[-|: ]+\\|");
    private static final String SAMPLE = "blockquote";
    private static final String CODE = "```";

    private final StringBuilder html = new StringBuilder();
    private final StringBuilder text = new StringBuilder();
    private final Spans spans;
    /** The element that is open, if one is, and the one for what is being gathered inside it. */
    private String around = "";

    private String inside = "";

    private Markdown(Spans spans) {
        this.spans = spans;
    }

    /** @param picture the attributes of a picture, by where it is */
    static String html(String markdown, UnaryOperator<String> picture) {
        Markdown page = new Markdown(new Spans(picture));
        markdown.lines().forEach(page::line);
        page.close();
        return page.html.toString();
    }

    private void line(String line) {
        Matcher heading = HEADING.matcher(line);
        Matcher item = ITEM.matcher(line);
        if (line.startsWith(CODE)) {
            code();
        } else if (around.equals(SAMPLE)) {
            sample(line);
        } else if (line.isBlank()) {
            close();
        } else if (heading.matches()) {
            heading(heading.group(1).length(), heading.group(2));
        } else if (line.startsWith("|")) {
            row(line);
        } else if (item.matches()) {
            item(item.group(1).startsWith("-") ? "ul" : "ol", item.group(2));
        } else {
            words(line);
        }
    }

    private void code() {
        boolean ends = around.equals(SAMPLE);
        close();
        if (!ends) {
            open(SAMPLE);
        }
    }

    /** Lines of a sample break where there is no room for them, so that all of the page can be read without moving it. */
    private void sample(String line) {
        String words = line.stripLeading();
        html.append("<code>" + "&nbsp;".repeat(line.length() - words.length()))
                .append(Spans.escaped(words))
                .append("</code><br>\n");
    }

    private void heading(int depth, String title) {
        close();
        html.append("<h" + depth + "><a name=\"" + Spans.anchor(title) + "\"></a>")
                .append(spans.html(title))
                .append("</h" + depth + ">\n");
    }

    private void row(String line) {
        open("table");
        if (RULED.matcher(line).matches()) {
            return;
        }
        html.append("<tr>");
        for (String cell : line.substring(1, line.lastIndexOf('|')).split("(?<!\\\\)\\|", -1)) {
            html.append("<td valign=\"top\">").append(spans.html(cell.strip())).append("</td>");
        }
        html.append("</tr>\n");
    }

    private void item(String list, String line) {
        open(list);
        flush();
        inside = "li";
        text.append(line);
    }

    private void words(String line) {
        if (inside.isEmpty()) {
            close();
            inside = "p";
        }
        text.append(text.length() == 0 ? "" : " ").append(line.strip());
    }

    private void open(String element) {
        if (!around.equals(element)) {
            close();
            around = element;
            html.append("<" + element + ">\n");
        }
    }

    private void flush() {
        if (!inside.isEmpty()) {
            html.append("<" + inside + ">").append(spans.html(text.toString())).append("</" + inside + ">\n");
        }
        inside = "";
        text.setLength(0);
    }

    private void close() {
        flush();
        if (!around.isEmpty()) {
            html.append("</" + around + ">\n");
        }
        around = "";
    }
}
