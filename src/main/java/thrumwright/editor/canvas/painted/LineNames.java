package thrumwright.editor.canvas.painted;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import thrumwright.drawing.Spread;
import thrumwright.editor.text.Texts;

/** The names of lines with their heights, beyond the rule, where there is no cloth: each with its height below, led to its line. */
final class LineNames {
    static final String START = "canvas.line.start";
    static final String TOP = "canvas.line.top";
    static final String STOP = "canvas.line.stop";

    /** From the rule's numbers to the names, pixels. */
    private static final int LEADER = 16;

    private static final int EDGE = 6;
    private static final int APART = 4;

    private final Rectangle seen;
    private final List<NamedLine> lines = new ArrayList<>();

    /** @param seen what is in the window */
    LineNames(Rectangle seen) {
        this.seen = seen;
    }

    /**
     * A line on the canvas.
     *
     * @param words its name, its height above the lower bar, and what else is to be said of it
     * @param y where the line is
     */
    private record NamedLine(List<String> words, double y) {}

    /**
     * Room for names and what leads to them, pixels; it stays while heights change, so that the picture keeps its place.
     *
     * @param height the longest there can be
     */
    static int width(FontMetrics metrics, Texts texts, String height) {
        int widest = metrics.stringWidth(height);
        for (String words : List.of(texts.say(START), texts.say(TOP), stop(texts, height))) {
            widest = Math.max(widest, metrics.stringWidth(words));
        }
        return LEADER + widest + EDGE;
    }

    /** How far the design may go on: said where it ends as planned, since what stands above then stands higher too. */
    static String stop(Texts texts, String height) {
        return texts.say(STOP, Map.of("height", height));
    }

    /** A line that can be seen has a name. */
    void add(double y, List<String> words) {
        if (y >= seen.y && y <= seen.getMaxY()) {
            lines.add(new NamedLine(words, y));
        }
    }

    /** Whether a number of the rule would lie where a name is led to its line. */
    boolean crosses(double y, FontMetrics metrics) {
        return lines.stream().anyMatch(line -> Math.abs(line.y() - y) < metrics.getHeight() * 0.6);
    }

    /**
     * @param g in the colour and the font of the names
     * @param from where leaders begin, at the rule
     * @param left where the room for names begins
     */
    void paint(Graphics2D g, double from, double left) {
        lines.sort(Comparator.comparingDouble(NamedLine::y));
        FontMetrics metrics = g.getFontMetrics();
        int most = lines.stream().mapToInt(line -> line.words().size()).max().orElse(0);
        double[] middles = middles(
                lines.stream().mapToDouble(NamedLine::y).toArray(),
                most * metrics.getHeight(),
                seen.getMinY(),
                seen.getMaxY());
        for (int i = 0; i < middles.length; i++) {
            NamedLine line = lines.get(i);
            leader(g, from, left, line.y(), middles[i]);
            words(g, line.words(), left + LEADER, middles[i]);
        }
    }

    private static void words(Graphics2D g, List<String> words, double x, double middle) {
        FontMetrics metrics = g.getFontMetrics();
        double base = middle - metrics.getHeight() * words.size() / 2.0 + metrics.getAscent();
        for (int row = 0; row < words.size(); row++) {
            g.drawString(words.get(row), (float) x, (float) (base + row * metrics.getHeight()));
        }
    }

    /** Where the middles of names lie, apart from each other and within the window. */
    static double[] middles(double[] lines, double high, double top, double bottom) {
        return Spread.apart(lines, high + APART, top + high / 2, bottom - high / 2);
    }

    private static void leader(Graphics2D g, double from, double left, double y, double middle) {
        Hair.level(g, from, left + 2, y, Hair.LINE);
        if (Math.abs(y - middle) < 1) {
            Hair.level(g, left + 2, left + LEADER - 3, y, Hair.LINE);
            return;
        }
        Path2D slanted = new Path2D.Double();
        slanted.moveTo(left + 2, y);
        slanted.lineTo(left + LEADER - 7, middle);
        slanted.lineTo(left + LEADER - 3, middle);
        g.setStroke(new BasicStroke((float) Hair.LINE));
        g.draw(slanted);
    }
}
