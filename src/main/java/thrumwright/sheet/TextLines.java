package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import thrumwright.measure.Unbroken;

/** Plain text in lines: headings, and sentences broken between words. */
final class TextLines {
    private static final int WIDTH = 88;

    private final StringBuilder text = new StringBuilder();

    /** All lines; they end with \n and are at most 88 characters long where words allow. */
    String text() {
        return text.toString();
    }

    void empty() {
        text.append('\n');
    }

    void heading(String title, char line) {
        if (!text.isEmpty()) {
            text.append('\n');
        }
        text.append(title)
                .append('\n')
                .append(String.valueOf(line).repeat(title.length()))
                .append('\n');
    }

    void wrapped(String sentence, String first, String further) {
        String indent = first;
        for (String line : lines(sentence, WIDTH - further.length())) {
            text.append(indent).append(Unbroken.plain(line)).append('\n');
            indent = further;
        }
    }

    /** The words of a sentence in lines of at most {@code width} characters, unless one word is longer. */
    private static List<String> lines(String sentence, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Unbroken.of(sentence).split("\\s+")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
