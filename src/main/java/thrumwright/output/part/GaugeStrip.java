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
import thrumwright.drawing.Palette;
import thrumwright.drawing.Spread;
import thrumwright.measure.Shown;
import thrumwright.output.page.Paper;
import thrumwright.output.page.TextPart;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.words.Words;

/**
 * A strip of paper at true size with the blocks of an end on it, and their names beside them, to cut out and hold against the
 * weaving by its lower edge.
 *
 * @param from height above the end's lowest line where this strip begins, mm
 * @param to where it ends, mm
 */
record GaugeStrip(String name, EndPlan end, double from, double to, Shown shown, Words words, PartMaker make)
        implements PaperStrip {
    private static final double WIDTH = 71 * Paper.POINTS;
    private static final double FIELD = 17 * Paper.POINTS;
    private static final double LABEL = 12.5;
    private static final double TITLE = 18;
    private static final double LEAD = 26;
    private static final double EDGE = 4;
    /** Heights that differ by less are the same, mm. */
    static final double HAIR = 1e-9;

    /** From where it begins as high as it may be with so many points of page, above 0, and no more blocks than find room. */
    GaugeStrip upTo(double most) {
        GaugeStrip strip = to(Math.min(end.height(), from + most / Paper.POINTS));
        int labels = (int) Math.max(1, Math.floor((most - TITLE) / LABEL));
        List<BlockPlan> blocks = strip.blocks();
        return blocks.size() <= labels ? strip : strip.to(blocks.get(labels - 1).top());
    }

    private GaugeStrip to(double other) {
        return new GaugeStrip(name, end, from, other, shown, words, make);
    }

    /** The blocks of which something lies on this strip. */
    private List<BlockPlan> blocks() {
        return end.blocks().stream()
                .filter(block -> block.height() > 0 && block.top() > from + HAIR && block.bottom() < to - HAIR)
                .toList();
    }

    private double field() {
        return (to - from) * Paper.POINTS;
    }

    @Override
    public double width() {
        return WIDTH;
    }

    @Override
    public double height(double width) {
        return Math.max(field(), TITLE + blocks().size() * LABEL);
    }

    private double at(double bottom, double mm) {
        return bottom - (mm - from) * Paper.POINTS;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double bottom = y + height(WIDTH);
        for (BlockPlan block : blocks()) {
            band(g, x, at(bottom, Math.min(to, block.top())), at(bottom, Math.max(from, block.bottom())), block);
        }
        g.setColor(make.palette().ink());
        g.setStroke(new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Rectangle2D.Double(x, bottom - field(), FIELD, field()));
        g.draw(new Rectangle2D.Double(x, y, WIDTH, bottom - y));
        fold(g, x, bottom);
        new TextPart(name, make.type().small(), make.palette().ink())
                .paint(g, x + FIELD + LEAD, y + EDGE, WIDTH - FIELD - LEAD - EDGE);
        labels(g, x, y + TITLE, bottom);
    }

    private void fold(Graphics2D g, double x, double bottom) {
        end.hem().filter(hem -> hem.foldLine() > from && hem.foldLine() < to).ifPresent(hem -> {
            double fold = at(bottom, hem.foldLine());
            g.setColor(make.palette().accent());
            g.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 3}, 0));
            g.draw(new Line2D.Double(x, fold, x + FIELD + 6, fold));
        });
    }

    private void band(Graphics2D g, double x, double high, double low, BlockPlan block) {
        Palette palette = make.palette();
        Color colour = block.work()
                .map(work -> palette.pale(new Color(work.yarn().colour().rgb())))
                .orElse(palette.paper());
        g.setColor(colour);
        g.fill(new Rectangle2D.Double(x, high, FIELD, low - high));
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.5f));
        g.draw(new Line2D.Double(x, high, x + FIELD, high));
    }

    private void labels(Graphics2D g, double x, double top, double bottom) {
        List<BlockPlan> highestFirst = new ArrayList<>(blocks());
        Collections.reverse(highestFirst);
        double[] wanted = highestFirst.stream()
                .mapToDouble(block ->
                        (at(bottom, Math.min(to, block.top())) + at(bottom, Math.max(from, block.bottom()))) / 2)
                .toArray();
        double[] places = Spread.apart(wanted, LABEL, top + LABEL / 2, bottom - LABEL / 2);
        for (int i = 0; i < places.length; i++) {
            label(g, x + FIELD, wanted[i], places[i], highestFirst.get(i));
        }
    }

    private void label(Graphics2D g, double x, double from, double at, BlockPlan block) {
        Path2D lead = new Path2D.Double();
        lead.moveTo(x + 2, from);
        lead.lineTo(x + LEAD - 10, at);
        lead.lineTo(x + LEAD - 3, at);
        g.setColor(make.palette().faint());
        g.setStroke(new BasicStroke(0.6f));
        g.draw(lead);
        String height = ", " + shown.height(block.height());
        double room = WIDTH - FIELD - LEAD - EDGE;
        String text = TextPart.shortened(
                        words.name(block.block()),
                        make.type().small(),
                        room - TextPart.width(height, make.type().small()) - 1)
                + height;
        new TextPart(text, make.type().small(), make.palette().ink()).paint(g, x + LEAD, at - LABEL / 2, room + EDGE);
    }
}
