package thrumwright.editor.canvas.painted;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import thrumwright.drawing.Spread;
import thrumwright.editor.text.Texts;

/**
 * The names of lines with their heights, in the rule's own column: beside the design, where the rule has no numbers, so that
 * they take no room from the cloth. Each stands against its line; where the design is too low for all, beside it.
 */
final class LineNames {
    static final String START = "canvas.line.start";
    static final String TOP = "canvas.line.top";
    static final String STOP = "canvas.line.stop";

    private static final int EDGE = 6;
    /** Between two names, and from a line to its name, pixels. */
    private static final int APART = 6;

    private static final int AGAINST = 2;
    /** How far a number of the rule reaches above or below its stroke at most: shares of its height. */
    private static final double HALF = 0.65;

    private final Rectangle seen;
    private final FontMetrics metrics;
    private final List<NamedLine> lines = new ArrayList<>();
    /** Null: to be worked out when it is asked for. */
    private List<Placed> placed;

    /** @param seen what is in the window */
    LineNames(Rectangle seen, FontMetrics metrics) {
        this.seen = seen;
        this.metrics = metrics;
    }

    /**
     * A line on the canvas.
     *
     * @param words its name, its height above the lower bar, and what else is to be said of it
     * @param y where the line is
     * @param down whether its name stands below it
     */
    private record NamedLine(List<String> words, double y, boolean down) {
        double wanted(double high) {
            return down ? y + AGAINST + high / 2 : y - AGAINST - high / 2;
        }
    }

    /** A name and where it stands, pixels. */
    private record Placed(NamedLine line, double top, double bottom) {
        boolean covers(double y, double around) {
            return y > top - around && y < bottom + around;
        }
    }

    /**
     * Room for names, pixels; it stays while heights change, so that the picture keeps its place.
     *
     * @param height the longest there can be
     */
    static int width(FontMetrics metrics, Texts texts, String height) {
        return EDGE
                + Stream.concat(Stream.of(texts.say(START), texts.say(TOP), height), stop(texts, height).stream())
                        .mapToInt(metrics::stringWidth)
                        .max()
                        .orElse(0);
    }

    /** How far the design may go on: said where it ends as planned, since what stands above then stands higher too. */
    static List<String> stop(Texts texts, String height) {
        return texts.say(STOP, Map.of("height", height)).lines().toList();
    }

    /** A line that can be seen has a name: below it, or above. */
    void add(double y, boolean down, List<String> words) {
        if (y >= seen.y && y <= seen.getMaxY()) {
            lines.add(new NamedLine(words, y, down));
            lines.sort(Comparator.comparingDouble(NamedLine::y));
            placed = null;
        }
    }

    /** Whether a number of the rule would lie where a name is or a line. */
    boolean covers(double y) {
        double half = metrics.getHeight() * HALF;
        return placed().stream()
                .anyMatch(name -> name.covers(y, half) || Math.abs(name.line().y() - y) < half);
    }

    private List<Placed> placed() {
        if (placed == null) {
            placed = place();
        }
        return placed;
    }

    private List<Placed> place() {
        List<Placed> names = new ArrayList<>();
        int most = lines.stream().mapToInt(line -> line.words().size()).max().orElse(0);
        double apart = lines.stream().mapToInt(line -> line.words().size()).sum() * metrics.getHeight() / 2.0;
        double[] middles = Spread.apart(
                lines.stream().mapToDouble(line -> line.wanted(high(line))).toArray(),
                apart + APART,
                seen.getMinY() + most * metrics.getHeight() / 2.0,
                seen.getMaxY() - most * metrics.getHeight() / 2.0);
        for (int i = 0; i < middles.length; i++) {
            double half = high(lines.get(i)) / 2;
            names.add(new Placed(lines.get(i), middles[i] - half, middles[i] + half));
        }
        return names;
    }

    private double high(NamedLine line) {
        return line.words().size() * (double) metrics.getHeight();
    }

    /**
     * @param g in the colour and the font of the names
     * @param from where lines go on, at the rule
     * @param left where the room for names begins
     * @param right where it ends
     */
    void paint(Graphics2D g, double from, double left, double right) {
        for (Placed name : placed()) {
            double y = name.line().y();
            boolean beside = placed().stream().anyMatch(other -> other.covers(y, 0));
            Hair.level(g, from, beside ? left - AGAINST : right, y, Hair.LINE);
            words(g, name, left);
        }
    }

    private void words(Graphics2D g, Placed name, double x) {
        double base = name.top() + metrics.getAscent();
        for (String words : name.line().words()) {
            g.drawString(words, (float) x, (float) base);
            base += metrics.getHeight();
        }
    }
}
