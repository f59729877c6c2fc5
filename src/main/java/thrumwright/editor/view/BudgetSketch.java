package thrumwright.editor.view;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.Spread;
import thrumwright.drawing.yarn.YarnPatch;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.WarpParts.Slice;
import thrumwright.editor.view.WarpParts.WarpStretch;
import thrumwright.measure.Shown;
import thrumwright.piece.Datum;
import thrumwright.piece.Place;
import thrumwright.plan.Budget;
import thrumwright.plan.Plan;

/**
 * The warp to scale in a picture of a certain size: where its parts, their blocks and all words lie. Made once for each
 * painting.
 */
final class BudgetSketch {
    private static final int SIDE = 24;
    private static final int BETWEEN = 16;
    private static final int BAR = 30;
    private static final int NEAR = 4;

    private final Palette palette;
    private final Texts texts;
    private final FontMetrics metrics;
    private final Budget budget;
    private final Shown shown;
    private final WarpParts parts;
    private final List<SketchLabel> names;
    private final List<SketchLabel> lines;
    private final int width;

    /** Pixels for a millimetre. */
    private final double scale;

    /** Room above the bar and below it. */
    private final double above;

    private final double below;

    /** How high the bar is: higher where there is room, but never so high that it looks like a piece of cloth. */
    private final double high;

    /** Words at a height above the lower bar, mm. */
    private record SketchLabel(String text, double at, Color colour) {}

    /**
     * @param width of the picture, pixels
     * @param height of the picture, pixels
     */
    BudgetSketch(Plan plan, Palette palette, Texts texts, FontMetrics metrics, int width, int height) {
        this.palette = palette;
        this.texts = texts;
        this.metrics = metrics;
        this.width = width;
        this.budget = plan.budget();
        this.shown = plan.piece().shown();
        this.parts = WarpParts.of(plan, palette);
        this.names = parts.stretches().stream()
                .map(part -> new SketchLabel(name(part), part.middle(), palette.ink()))
                .toList();
        this.lines = bothBarsAndLines(plan);
        this.scale = Math.max(1, width - 2 * SIDE) / Math.max(1, Math.max(budget.open(), parts.reach()));
        this.above = metrics.getHeight() * (0.6 + 1.1 * rows(lines));
        this.below = metrics.getHeight() * (0.9 + 1.1 * rows(names));
        this.high = Math.max(BAR, Math.min(3 * BAR, height - above - below));
    }

    private String name(WarpStretch part) {
        return texts.say("budget." + part.key(), Map.of("height", shown.height(part.height())));
    }

    /** From the lowest. */
    private List<SketchLabel> bothBarsAndLines(Plan plan) {
        List<SketchLabel> all = new ArrayList<>();
        all.add(new SketchLabel(lower(plan), 0, palette.ink()));
        all.add(line("budget.line.start", budget.startLine(), palette.accent()));
        all.add(new SketchLabel(
                texts.say("budget.line.stop", Map.of("height", shown.height(plan.above(Place.TOP, budget.stopLine())))),
                budget.stopLine(),
                palette.accent()));
        all.add(line(upper(plan), budget.open(), palette.ink()));
        all.sort(Comparator.comparingDouble(SketchLabel::at));
        return all;
    }

    private String lower(Plan plan) {
        Datum datum = plan.datum(Place.START);
        return texts.say(datum == Datum.LOWER_BAR ? "budget.bar.lower" : "datum." + datum);
    }

    /** What ends the warp above: another bar, another row, or nothing but its own length. */
    private static String upper(Plan plan) {
        if (plan.room().travels()) {
            return "budget.bar.end";
        }
        return plan.datum(Place.START) == Datum.LOWER_BAR ? "budget.bar.upper" : "budget.bar.row";
    }

    private SketchLabel line(String key, double at, Color colour) {
        return new SketchLabel(texts.say(key, Map.of("height", shown.height(at))), at, colour);
    }

    /** All that it shows in words. */
    String description() {
        StringBuilder all = new StringBuilder();
        names.forEach(part -> all.append(part.text()).append(". "));
        lines.forEach(line -> all.append(line.text()).append(". "));
        return all.toString();
    }

    /** How high the picture must be for its words, pixels. */
    int leastHeight() {
        return (int) Math.ceil(above + BAR + below);
    }

    /** The block at a point of the picture, or close to it. */
    Optional<Slice> at(Point point) {
        boolean onBar = point.y >= above - 3 && point.y <= above + high + 3;
        return onBar ? parts.at((point.x - SIDE) / scale, NEAR / scale) : Optional.empty();
    }

    void paint(Graphics2D g, Selection selection) {
        parts.stretches().forEach(part -> bar(g, part));
        parts.slices().forEach(slice -> YarnPatch.paint(g, palette, slice.colour(), box(slice.from(), slice.to())));
        upright(g, 0, 4, palette.ink());
        upright(g, budget.open(), 4, palette.ink());
        upright(g, budget.startLine(), 2, palette.accent());
        upright(g, budget.stopLine(), 2, palette.accent());
        parts.slices().stream()
                .filter(slice -> selection.has(slice.place(), slice.id()))
                .forEach(slice -> frame(g, slice));
        label(g, lines, above - 7, -1);
        label(g, names, above + high + 7, 1);
    }

    private Rectangle2D box(double from, double to) {
        return new Rectangle2D.Double(SIDE + from * scale, above, Math.max(1, (to - from) * scale), high);
    }

    private void bar(Graphics2D g, WarpStretch part) {
        Rectangle2D box = box(part.from(), part.to());
        g.setColor("design".equals(part.key()) ? palette.post() : palette.paper());
        g.fill(box);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(1));
        g.draw(box);
    }

    /** Beyond the bar's edges, so that a thin block is seen as well. */
    private void frame(Graphics2D g, Slice slice) {
        Rectangle2D box = box(slice.from(), slice.to());
        g.setColor(UIManager.getColor("Thrumwright.selected"));
        g.setStroke(new BasicStroke(2));
        g.draw(new Rectangle2D.Double(box.getX() - 2, box.getY() - 4, box.getWidth() + 4, box.getHeight() + 8));
    }

    /** A bar of the loom, or a line across the warp. */
    private void upright(Graphics2D g, double at, int thick, Color colour) {
        double x = SIDE + at * scale;
        g.setColor(colour);
        g.setStroke(new BasicStroke(thick));
        g.draw(new Line2D.Double(x, above - 5, x, above + high + 5));
    }

    /**
     * Words above or below the bar, each with a line to what it names, on as many rows as they need.
     *
     * @param from where those lines begin
     * @param down 1 below, −1 above
     */
    private void label(Graphics2D g, List<SketchLabel> labels, double from, int down) {
        int rows = rows(labels);
        double[] wanted =
                labels.stream().mapToDouble(label -> SIDE + label.at() * scale).toArray();
        double[] placed = placed(labels, wanted, rows);
        for (int i = 0; i < placed.length; i++) {
            int row = down > 0 ? i % rows : rows - 1 - i % rows;
            double base = down > 0
                    ? from + metrics.getAscent() + 3 + 1.1 * metrics.getHeight() * row
                    : from - metrics.getDescent() - 2 - 1.1 * metrics.getHeight() * row;
            double near = down > 0 ? base - metrics.getAscent() : base + metrics.getDescent();
            g.setColor(palette.faint());
            g.setStroke(new BasicStroke(1));
            g.draw(new Line2D.Double(wanted[i], from, placed[i], near));
            g.setColor(labels.get(i).colour());
            String text = labels.get(i).text();
            g.drawString(text, (float) (placed[i] - metrics.stringWidth(text) / 2.0), (float) base);
        }
    }

    /** The middle of each label, pixels: as near to what it names as the others allow. */
    private double[] placed(List<SketchLabel> labels, double[] wanted, int rows) {
        double widest = widest(labels);
        if (rows > 1) {
            return Spread.apart(wanted, (widest + BETWEEN) / rows, widest / 2 + 6, width - widest / 2 - 6);
        }
        double[] before = new double[wanted.length];
        double[] freed = wanted.clone();
        for (int i = 1; i < wanted.length; i++) {
            before[i] = before[i - 1] + (width(labels.get(i - 1)) + width(labels.get(i))) / 2 + BETWEEN;
            freed[i] -= before[i];
        }
        int last = wanted.length - 1;
        double low = width(labels.get(0)) / 2 + 6;
        double high = width - width(labels.get(last)) / 2 - 6 - before[last];
        double[] placed = Spread.apart(freed, 0, low, high);
        for (int i = 0; i < placed.length; i++) {
            placed[i] += before[i];
        }
        return placed;
    }

    private double width(SketchLabel label) {
        return metrics.stringWidth(label.text());
    }

    private double widest(List<SketchLabel> labels) {
        return labels.stream().mapToDouble(this::width).max().orElse(0);
    }

    /** On how many rows they have to stand, so that those on one row keep apart. */
    private int rows(List<SketchLabel> labels) {
        double widest = widest(labels);
        double needed = (widest + BETWEEN) * (labels.size() - 1);
        double room = Math.max(1, width - widest - BETWEEN);
        return (int) Math.min(Math.max(1, labels.size()), Math.max(1, Math.ceil(needed / room)));
    }
}
