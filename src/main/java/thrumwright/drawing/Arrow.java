package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Draws arrows in ink, with a little paper round them so that they stand out from whatever they cross. */
public record Arrow(Graphics2D g, Palette palette) {
    /**
     * From one place on the page to another at the same height.
     *
     * @param size half the width of its head, page units, 0 or more
     */
    public void level(double from, double to, double y, double size) {
        straight(from, y, to, y, size);
    }

    /**
     * From one place on the page to another.
     *
     * @param size half the width of its head, page units, 0 or more
     */
    public void straight(double fromX, double fromY, double toX, double toY, double size) {
        double length = Math.hypot(toX - fromX, toY - fromY);
        if (!(length > 0)) {
            return;
        }
        double alongX = (toX - fromX) / length * size;
        double alongY = (toY - fromY) / length * size;
        Path2D arrow = new Path2D.Double(new Line2D.Double(fromX, fromY, toX, toY));
        arrow.moveTo(toX - 1.25 * alongX + alongY, toY - 1.25 * alongY - alongX);
        arrow.lineTo(toX, toY);
        arrow.lineTo(toX - 1.25 * alongX - alongY, toY - 1.25 * alongY + alongX);
        g.setColor(palette.paper());
        g.setStroke(new BasicStroke((float) (size * 1.1), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(arrow);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke((float) (size * 0.45), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(arrow);
    }
}
