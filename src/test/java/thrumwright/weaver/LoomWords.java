package thrumwright.weaver;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.LoomStep;

/** What is read at the loom, step by step and row by row, put as in the text form. */
final class LoomWords {
    private static final Pattern SHOWN = Pattern.compile(
            "<p class=\"(part)\">(.*?)</p>|<(h1)>(.*?)</h1>|<(p)>(.*?)</p>|<(li)>([^<\n]*\\.)</li>"
                    + "|<span class=\"(count)\">(?:pick|row) (\\d+) of \\d+</span>\\s*<span class=\"row\">(.*?)</span>",
            Pattern.DOTALL);

    private final StringBuilder text = new StringBuilder();
    private String part = "";

    private LoomWords() {}

    static String of(LoomSheet sheet) {
        LoomWords words = new LoomWords();
        for (LoomStep step : sheet.steps()) {
            words.part(step.part());
            step.opening().forEach(words::said);
            words.step(step.title());
            step.cuts().stream().filter(cut -> cut.endsWith(".")).forEach(words::said);
            step.step().sentences().forEach(words::said);
            step.rows().forEach(row -> words.row(row.line().label(), row.said()));
        }
        return words.text.toString();
    }

    /**
     * Cautions stand among the words of the page, and what opens a part of the work before the first step's own; of
     * what to take in hand only whole sentences say more than how long it is.
     */
    static String ofPage(String html) {
        LoomWords words = new LoomWords();
        Matcher shown = SHOWN.matcher(html);
        while (shown.find()) {
            if (shown.group(1) != null) {
                words.part(plain(shown.group(2)));
            } else if (shown.group(3) != null) {
                words.step(plain(shown.group(4)));
            } else if (shown.group(5) != null) {
                words.said(plain(shown.group(6)));
            } else if (shown.group(7) != null) {
                words.said(plain(shown.group(8)));
            } else {
                words.row(shown.group(10), plain(shown.group(11)));
            }
        }
        return words.text.toString();
    }

    private void part(String title) {
        if (!title.equals(part)) {
            text.append(title).append('\n').append("-".repeat(title.length())).append('\n');
            part = title;
        }
    }

    private void step(String title) {
        text.append("\u2610 ").append(title.replaceFirst(" +", " ")).append('\n');
    }

    private void said(String sentence) {
        text.append("     ").append(sentence).append('\n');
    }

    private void row(String number, String said) {
        text.append("     \u2610 ").append(number).append(' ').append(said).append('\n');
    }

    private static String plain(String html) {
        return html.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .strip();
    }
}
