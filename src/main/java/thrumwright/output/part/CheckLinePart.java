package thrumwright.output.part;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Part;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;

/** A line of a known length: 100 mm, or 4 inches. If it isn't so long on paper, the page was printed too small or large. */
public record CheckLinePart(UnitSystem units, Phrases phrases, Type type, Palette palette) implements Part {
    private static final double BAR = 5;
    private static final double THIN = 0.6;
    private static final double BESIDE = 10;
    private static final double LEAST_WORDS = 150;

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

    /** The words stand beside the line, where there is room. */
    private boolean beside(double width) {
        return width - length() - BESIDE >= LEAST_WORDS;
    }

    private double wordsHeight(double width) {
        return words().height(beside(width) ? width - length() - BESIDE : width);
    }

    @Override
    public double height(double width) {
        return beside(width) ? Math.max(2 * BAR + 3, wordsHeight(width)) : 2 * BAR + 6 + wordsHeight(width);
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double middle = beside(width) ? y + height(width) / 2 : y + BAR + 1;
        g.setColor(palette.ink());
        // filled, not stroked, so that its outer edges are exactly so far apart
        g.fill(new Rectangle2D.Double(x, middle - THIN / 2, length(), THIN));
        g.fill(new Rectangle2D.Double(x, middle - BAR, THIN, 2 * BAR));
        g.fill(new Rectangle2D.Double(x + length() - THIN, middle - BAR, THIN, 2 * BAR));
        if (beside(width)) {
            double left = length() + BESIDE;
            words().paint(g, x + left, y + (height(width) - wordsHeight(width)) / 2, width - left);
        } else {
            words().paint(g, x, y + 2 * BAR + 6, width);
        }
    }
}
