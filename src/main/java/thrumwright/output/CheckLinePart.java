package thrumwright.output;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;

/** A line of a known length: 100 mm, or 4 inches. If it isn't so long on paper, the page was printed too small or large. */
record CheckLinePart(UnitSystem units, Phrases phrases, Type type, Palette palette) implements Part {
    private static final double BAR = 5;

    /** In points. */
    double length() {
        return (units == UnitSystem.INCHES ? 4 * 25.4 : 100) * Paper.POINTS;
    }

    private Part words() {
        return new TextPart(
                phrases.say(units == UnitSystem.INCHES ? "gauge.check.inches" : "gauge.check.metric"),
                type.body(),
                palette.ink());
    }

    @Override
    public double height(double width) {
        return 2 * BAR + 6 + words().height(width);
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double middle = y + BAR + 1;
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Line2D.Double(x, middle, x + length(), middle));
        g.draw(new Line2D.Double(x, middle - BAR, x, middle + BAR));
        g.draw(new Line2D.Double(x + length(), middle - BAR, x + length(), middle + BAR));
        words().paint(g, x, y + 2 * BAR + 6, width);
    }
}
