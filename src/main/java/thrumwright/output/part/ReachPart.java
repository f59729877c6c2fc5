package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import thrumwright.drawing.Palette;
import thrumwright.measure.Shown;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Part;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.sheet.Step;

/**
 * The height to reach: in large type, and in words.
 *
 * @param block height of the block, mm
 */
record ReachPart(Step step, double block, Type type, Palette palette) implements Part {
    /** Blocks up to so many mm are drawn at their true height beside the words. */
    private static final double TRUE_SIZE_UP_TO = 60;

    private static final double BAR = 12;

    private double bar() {
        return block <= TRUE_SIZE_UP_TO ? block * Paper.POINTS : 0;
    }

    private String brief() {
        return "↑ " + Shown.inFullHeight(step.reachBrief());
    }

    private double left() {
        return TextPart.width(brief(), type.essential()) + 14 + (bar() > 0 ? 2 * BAR : 0);
    }

    private Part words() {
        return new TextPart(step.reach(), type.body(), palette.ink());
    }

    @Override
    public double height(double width) {
        return Math.max(bar() + 8, Math.max(type.large() * 1.3, words().height(width - left())));
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double height = height(width);
        double brief = (height - type.large() * 1.3) / 2;
        new TextPart(brief(), type.essential(), palette.ink()).paint(g, x, y + brief, width);
        if (bar() > 0) {
            trueSize(g, x + left() - 1.7 * BAR, y + (height - bar()) / 2);
        }
        Part words = words();
        double spare = (height - words.height(width - left())) / 2;
        words.paint(g, x + left(), y + spare, width - left());
    }

    /** The block's height as it is on the loom, to hold against the weaving. */
    private void trueSize(Graphics2D g, double x, double top) {
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Line2D.Double(x, top, x + BAR, top));
        g.draw(new Line2D.Double(x, top + bar(), x + BAR, top + bar()));
        g.draw(new Line2D.Double(x + BAR / 2, top, x + BAR / 2, top + bar()));
    }
}
