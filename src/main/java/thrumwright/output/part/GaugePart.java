package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import thrumwright.drawing.Palette;
import thrumwright.drawing.Spread;
import thrumwright.measure.Shown;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Part;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.words.Words;

/**
 * A strip of paper at true size with the blocks of an end on it, to cut out and hold against the weaving.
 *
 * @param from height above the end's lowest line where this strip begins, mm
 * @param to where it ends, mm
 */
public record GaugePart(EndPlan end, double from, double to, Shown shown, Type type, Palette palette) implements Part {
    private static final double STRIP = 26 * Paper.POINTS;
    private static final double LABEL = 15;
    private static final double PADDING = 8;
    /** Heights that differ by less are the same, mm. */
    private static final double HAIR = 1e-9;

    /** Strips that together cover an end, none with its labels higher than {@code most} points, which are more than 0. */
    public static List<Part> strips(EndPlan end, Shown shown, Type type, Palette palette, double most) {
        double longest = (most - 2 * PADDING) / Paper.POINTS;
        int labels = (int) Math.max(1, Math.floor((most - 2 * PADDING) / LABEL));
        List<Part> strips = new ArrayList<>();
        double from = 0;
        while (from < end.height() - HAIR) {
            double to = Math.min(end.height(), from + longest);
            GaugePart strip = new GaugePart(end, from, to, shown, type, palette);
            List<BlockPlan> blocks = strip.blocks();
            if (blocks.size() > labels) {
                strip = new GaugePart(end, from, blocks.get(labels - 1).top(), shown, type, palette);
            }
            strips.add(strip);
            from = strip.to();
        }
        return strips;
    }

    /** The blocks of which something lies on this strip. */
    private List<BlockPlan> blocks() {
        return end.blocks().stream()
                .filter(block -> block.height() > 0 && block.top() > from + HAIR && block.bottom() < to - HAIR)
                .toList();
    }

    private double strip() {
        return (to - from) * Paper.POINTS;
    }

    @Override
    public double height(double width) {
        return Math.max(strip(), blocks().size() * LABEL) + 2 * PADDING;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double top = y + (height(width) - strip()) / 2;
        for (BlockPlan block : blocks()) {
            field(g, x, at(top, Math.min(to, block.top())), at(top, Math.max(from, block.bottom())), block);
        }
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Rectangle2D.Double(x, top, STRIP, strip()));
        end.hem().filter(hem -> hem.foldLine() > from && hem.foldLine() < to).ifPresent(hem -> {
            double fold = at(top, hem.foldLine());
            g.setColor(palette.accent());
            g.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 3}, 0));
            g.draw(new Line2D.Double(x, fold, x + STRIP + 8, fold));
        });
        labels(g, x, top, y, width);
    }

    private double at(double top, double mm) {
        return top + (to - mm) * Paper.POINTS;
    }

    private void field(Graphics2D g, double x, double high, double low, BlockPlan block) {
        Color colour = block.work()
                .map(work -> new Color(work.yarn().colour().rgb()))
                .map(own -> palette.pale(own))
                .orElse(palette.paper());
        g.setColor(colour);
        g.fill(new Rectangle2D.Double(x, high, STRIP, low - high));
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.5f));
        g.draw(new Line2D.Double(x, high, x + STRIP, high));
    }

    private void labels(Graphics2D g, double x, double top, double y, double width) {
        Words words = new Words(Locale.UK);
        List<BlockPlan> highestFirst = new ArrayList<>(blocks());
        Collections.reverse(highestFirst);
        double[] wanted = highestFirst.stream()
                .mapToDouble(block ->
                        (at(top, Math.min(to, block.top())) + at(top, Math.max(from, block.bottom()))) / 2)
                .toArray();
        double[] places = Spread.apart(wanted, LABEL, y + LABEL / 2, y + height(width) - LABEL / 2);
        double left = x + STRIP + 34;
        for (int i = 0; i < places.length; i++) {
            BlockPlan block = highestFirst.get(i);
            Path2D lead = new Path2D.Double();
            lead.moveTo(x + STRIP + 3, wanted[i]);
            lead.lineTo(left - 12, places[i]);
            lead.lineTo(left - 4, places[i]);
            g.setColor(palette.faint());
            g.setStroke(new BasicStroke(0.6f));
            g.draw(lead);
            String height = ", " + shown.height(block.height());
            double room = x + width - left - TextPart.width(height, type.body());
            String text = TextPart.shortened(words.name(block.block()), type.body(), room) + height;
            new TextPart(text, type.body(), palette.ink()).paint(g, left, places[i] - LABEL / 2, x + width - left + 1);
        }
    }
}
