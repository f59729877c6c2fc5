package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import thrumwright.measure.Unbroken;

/** Plain text in lines: headings, and sentences broken between words. */
final class TextLines {
    private static final int WIDTH = 80;
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private final StringBuilder text = new StringBuilder();

    /** All lines; they end with \n and are at most 80 characters long. */
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
        int longest = 0;
        for (String words : lines(title, WIDTH)) {
            text.append(words).append('\n');
            longest = Math.max(longest, words.length());
        }
        text.append(String.valueOf(line).repeat(longest)).append('\n');
    }

    void wrapped(String sentence, String first, String further) {
        String indent = first;
        for (String line : lines(sentence, WIDTH - further.length())) {
            text.append(indent).append(Unbroken.plain(line)).append('\n');
            indent = further;
        }
    }

    /** The words of a sentence in lines of at most {@code width} characters; a longer word is divided. */
    private static List<String> lines(String sentence, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : SPACES.split(Unbroken.of(sentence))) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
            while (line.length() > width) {
                lines.add(line.substring(0, width));
                line.delete(0, width);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
