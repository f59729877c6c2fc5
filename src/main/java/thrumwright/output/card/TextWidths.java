package thrumwright.output.card;

import java.awt.Font;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import thrumwright.output.page.TextPart;

/** How wide texts are. A card is set in many forms before one is chosen, and each asks for the same words again. */
final class TextWidths {
    private static final Pattern SPACES = Pattern.compile(" +");

    private final Map<Asked, List<String>> asked = new HashMap<>();

    private record Asked(String text, Font font, double width) {}

    double of(String text, Font font) {
        return TextPart.wordWidth(text, font);
    }

    /** Words that fit a line together; a word too long for any line is divided. */
    List<String> lines(String text, Font font, double width) {
        return asked.computeIfAbsent(new Asked(text, font, width), fresh -> broken(text, font, width));
    }

    private List<String> broken(String text, Font font, double width) {
        List<String> lines = new ArrayList<>();
        double used = width;
        for (String word : SPACES.split(text.strip())) {
            for (String piece : pieces(word, font, width)) {
                double longer = used + of(" ", font) + of(piece, font);
                used = longer <= width ? longer : of(piece, font);
                add(piece, longer <= width, lines);
            }
        }
        return lines;
    }

    private static void add(String piece, boolean goesOn, List<String> lines) {
        int last = lines.size() - 1;
        if (goesOn) {
            lines.set(last, lines.get(last) + " " + piece);
        } else {
            lines.add(piece);
        }
    }

    private List<String> pieces(String word, Font font, double width) {
        if (of(word, font) <= width) {
            return List.of(word);
        }
        int fits = 1;
        while (fits < word.length() - 1 && of(word.substring(0, fits + 1), font) <= width) {
            fits++;
        }
        List<String> pieces = new ArrayList<>(List.of(word.substring(0, fits)));
        if (fits < word.length()) {
            pieces.addAll(pieces(word.substring(fits), font, width));
        }
        return pieces;
    }

    /** A text, cut short with “…” where it would be wider. */
    String shortened(String text, Font font, double width) {
        String shown = text;
        while (shown.length() > 1 && of(shown, font) > width) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        return shown;
    }
}
