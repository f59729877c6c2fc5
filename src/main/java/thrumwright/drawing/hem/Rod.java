package thrumwright.drawing.hem;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import thrumwright.drawing.Palette;

/**
 * A bar or a slat that comes out of a hem towards the eye, drawn slanting so that it is seen to be long.
 *
 * @param x of its middle in the hem, page units
 * @param y the same
 * @param wide across
 * @param high down
 * @param slat whether it has corners
 */
record Rod(double x, double y, double wide, double high, boolean slat) {
    /** A round one's outline touches it half way between its sides. */
    private double touches() {
        return slat ? 0.5 : 0.5 * Math.sqrt(0.5);
    }

    /** @param out how far it stands out, across and down */
    void draw(Graphics2D g, Palette palette, double out) {
        double aside = wide * touches();
        double up = high * touches();
        Line2D upper = new Line2D.Double(x + aside, y - up, x + out + aside, y + out - up);
        Line2D lower = new Line2D.Double(x + out - aside, y + out + up, x - aside, y + up);
        Path2D body = new Path2D.Double(upper);
        body.append(lower, true);
        g.setColor(palette.post());
        g.fill(body);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.7f));
        g.draw(upper);
        g.draw(lower);
        double round = slat ? 0.5 * high : wide;
        HemPainting.dot(
                g,
                new RoundRectangle2D.Double(x + out - wide / 2, y + out - high / 2, wide, high, round, round),
                palette.post());
    }
}
