package thrumwright.output.card;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Large words in lines, one below the other.
 *
 * @param lines none is empty
 * @param width that they may take, points
 */
record LargeLines(List<List<LargeWord>> lines, double width, CardStyle style) {
    LargeLines {
        lines = lines.stream().map(List::copyOf).toList();
    }

    /** Fills lines with words, one after another. */
    static LargeLines of(List<LargeWord> words, double width, CardStyle style) {
        List<List<LargeWord>> lines = new ArrayList<>();
        for (LargeWord word : words) {
            for (LargeWord part : word.broken(width, style)) {
                boolean fits = !lines.isEmpty() && room(lines.get(lines.size() - 1), width, style) >= part.width();
                if (!fits) {
                    lines.add(new ArrayList<>());
                }
                lines.get(lines.size() - 1).add(part);
            }
        }
        return new LargeLines(lines, width, style);
    }

    /** What is left of a line for one more word, points. */
    private static double room(List<LargeWord> line, double width, CardStyle style) {
        return width
                - line.stream()
                        .mapToDouble(word -> word.width() + style.space())
                        .sum();
    }

    LargeLines and(LargeLines below) {
        List<List<LargeWord>> all = new ArrayList<>(lines);
        all.addAll(below.lines);
        return new LargeLines(all, width, style);
    }

    double height() {
        return lines.size() * style.line();
    }

    /** The widest line, points. */
    double widest() {
        return lines.stream()
                .mapToDouble(line -> width - room(line, width, style) - style.space())
                .max()
                .orElse(0);
    }

    /** What is free in each line between the words at its beginning and those at its end, from their upper left corner. */
    List<Rectangle2D> gaps() {
        List<Rectangle2D> gaps = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            double left = 0;
            double right = width;
            for (LargeWord word : lines.get(i)) {
                if (word.right()) {
                    right -= word.width() + style.space();
                } else {
                    left += word.width() + style.space();
                }
            }
            gaps.add(new Rectangle2D.Double(left, i * style.line(), Math.max(0, right - left), style.line()));
        }
        return gaps;
    }

    /** Takes every word with its place, from the upper left corner of all. */
    interface Taker {
        void take(LargeWord word, double x, double baseline);
    }

    void each(Taker taker) {
        for (int i = 0; i < lines.size(); i++) {
            double left = 0;
            double right = width;
            double baseline = i * style.line() + style.baseline();
            for (LargeWord word : lines.get(i)) {
                if (word.right()) {
                    right -= word.width();
                    taker.take(word, right, baseline);
                    right -= style.space();
                } else {
                    taker.take(word, left, baseline);
                    left += word.width() + style.space();
                }
            }
        }
    }
}
