package thrumwright.drawing.hem;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.RectangularShape;
import thrumwright.drawing.Palette;

/** What is cut across looks the same in every hem. */
final class HemPainting {
    private HemPainting() {}

    /** A section with its rim and a soft light. */
    static void dot(Graphics2D g, RectangularShape dot, Color colour) {
        g.setColor(Palette.mixed(colour, Color.BLACK, 0.06));
        g.fill(dot);
        g.setColor(Palette.mixed(colour, Color.WHITE, 0.16));
        double w = dot.getWidth();
        double h = dot.getHeight();
        RectangularShape light = (RectangularShape) dot.clone();
        light.setFrame(dot.getX() + 0.2 * w, dot.getY() + 0.2 * h, 0.6 * w, 0.6 * h);
        g.fill(light);
        g.setColor(Palette.mixed(colour, Color.BLACK, 0.46));
        g.setStroke(new BasicStroke((float) Math.max(0.3, Math.min(1.2, w * 0.1))));
        g.draw(dot);
    }
}
