package thrumwright.editor.canvas.painted;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thrumwright.drawing.Spread;
import thrumwright.editor.text.Texts;

/** The names of lines with their heights, beyond the rule, where there is no cloth: each in two rows, led to its line. */
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
     * @param height above the lower bar, in words
     * @param y where the line is
     */
    private record NamedLine(String name, String height, double y) {}

    /**
     * Room for names and what leads to them, pixels; it stays while heights change, so that the picture keeps its place.
     *
     * @param height the longest there can be
     */
    static int width(FontMetrics metrics, Texts texts, String height) {
        int widest = metrics.stringWidth(height);
        for (String key : List.of(START, TOP, STOP)) {
            widest = Math.max(widest, metrics.stringWidth(texts.say(key)));
        }
        return LEADER + widest + EDGE;
    }

    /** A line that can be seen has a name. */
    void add(String name, String height, double y) {
        if (y >= seen.y && y <= seen.getMaxY()) {
            lines.add(new NamedLine(name, height, y));
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
        double[] middles = middles(
                lines.stream().mapToDouble(NamedLine::y).toArray(),
                2 * metrics.getHeight(),
                seen.getMinY(),
                seen.getMaxY());
        for (int i = 0; i < middles.length; i++) {
            NamedLine line = lines.get(i);
            leader(g, from, left, line.y(), middles[i]);
            float x = (float) (left + LEADER);
            g.drawString(line.name(), x, (float) (middles[i] - metrics.getDescent()));
            g.drawString(line.height(), x, (float) (middles[i] + metrics.getAscent()));
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
