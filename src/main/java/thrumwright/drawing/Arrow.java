package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Draws arrows in ink, with a little paper round them so that they stand out from whatever they cross. */
final class Arrow {
    private final Graphics2D g;
    private final Palette palette;

    Arrow(Graphics2D g, Palette palette) {
        this.g = g;
        this.palette = palette;
    }

    /**
     * From one place on the page to another at the same height.
     *
     * @param size half the width of its head, page units
     */
    void level(double from, double to, double y, double size) {
        double back = from < to ? -size : size;
        Path2D arrow = new Path2D.Double(new Line2D.Double(from, y, to, y));
        arrow.moveTo(to + 1.25 * back, y - size);
        arrow.lineTo(to, y);
        arrow.lineTo(to + 1.25 * back, y + size);
        g.setColor(palette.paper());
        g.setStroke(new BasicStroke((float) (size * 1.1), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(arrow);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke((float) (size * 0.45), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(arrow);
    }
}
