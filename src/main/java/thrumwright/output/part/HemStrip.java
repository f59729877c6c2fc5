package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import thrumwright.output.page.Paper;
import thrumwright.output.page.TextPart;

/**
 * A strip of paper as deep as a hem, to hold against the fold by its lower edge.
 *
 * @param depth mm, more than 0
 */
record HemStrip(String name, double depth, PartMaker make) implements Strip {
    private static final double WIDTH = 34 * Paper.POINTS;
    private static final double EDGE = 4;

    private TextPart words() {
        return new TextPart(name, make.type().small(), make.palette().ink());
    }

    @Override
    public double width() {
        return WIDTH;
    }

    private double line() {
        return depth * Paper.POINTS;
    }

    @Override
    public double height(double width) {
        return Math.max(line(), wordsHeight() + 2 * EDGE + (line() < wordsHeight() + 2 * EDGE ? line() : 0));
    }

    private double wordsHeight() {
        return words().height(WIDTH - 2 * EDGE);
    }

    /** Where the words find no room below the line, they stand above it. */
    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double bottom = y + height(WIDTH);
        g.setColor(make.palette().ink());
        g.setStroke(new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Rectangle2D.Double(x, y, WIDTH, bottom - y));
        g.draw(new Line2D.Double(x, bottom - line(), x + WIDTH, bottom - line()));
        words().paint(g, x + EDGE, y + EDGE, WIDTH - 2 * EDGE);
    }
}
