package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.output.page.Paper;
import thrumwright.output.page.TextPart;

/**
 * A strip of paper as deep as a hem, or as two, to hold against the fold by its lower edge.
 *
 * @param hems the deepest first, each at least {@link #APART} deeper than the next
 */
record HemStrip(List<Depth> hems, PartMaker make) implements PaperStrip {
    /** Hems of one strip differ by so much, mm, so that each has room for its name. */
    static final double APART = 5;

    private static final double WIDTH = 34 * Paper.POINTS;
    private static final double EDGE = 4;
    private static final double BELOW = 1;

    /** How deep a hem is, mm, more than 0, and its name. */
    record Depth(String name, double mm) {
        double points() {
            return mm * Paper.POINTS;
        }
    }

    private TextPart words(Depth hem) {
        return new TextPart(hem.name(), make.type().small(), make.palette().ink());
    }

    private double wordsHeight(Depth hem) {
        return words(hem).height(WIDTH - 2 * EDGE) + BELOW;
    }

    @Override
    public double width() {
        return WIDTH;
    }

    /** The words of the shallowest may need more room below its line than there is; then they stand above the deepest. */
    @Override
    public double height(double width) {
        return hems.get(0).points() + (above() ? wordsHeight(shallowest()) : 0);
    }

    private Depth shallowest() {
        return hems.get(hems.size() - 1);
    }

    private boolean above() {
        return shallowest().points() < wordsHeight(shallowest());
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double bottom = y + height(WIDTH);
        g.setColor(make.palette().ink());
        g.setStroke(new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Rectangle2D.Double(x, y, WIDTH, bottom - y));
        for (Depth hem : hems) {
            double line = bottom - hem.points();
            g.setColor(make.palette().ink());
            g.draw(new Line2D.Double(x, line, x + WIDTH, line));
            boolean top = above() && hem.equals(shallowest());
            words(hem).paint(g, x + EDGE, (top ? y : line) + BELOW, WIDTH - 2 * EDGE);
        }
    }
}
