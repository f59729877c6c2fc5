package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** Draws a blunt needle from its eye to its tip. */
public record Needle(Graphics2D g, Palette palette) {
    /**
     * @param length page units, more than 0
     * @param thick page units, more than 0
     * @param angle the way from eye to tip, radians, 0 to the right, growing downwards
     */
    public void draw(double tipX, double tipY, double length, double thick, double angle) {
        AffineTransform kept = g.getTransform();
        g.translate(tipX, tipY);
        g.rotate(angle);
        Path2D shape = new Path2D.Double();
        double half = thick / 2;
        shape.moveTo(0, 0);
        shape.quadTo(-1.5 * thick, half * 0.9, -0.3 * length, half);
        shape.lineTo(-length, half);
        shape.quadTo(-length - thick, 0, -length, -half);
        shape.lineTo(-0.3 * length, -half);
        shape.quadTo(-1.5 * thick, -half * 0.9, 0, 0);
        g.setColor(palette.post());
        g.fill(shape);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke((float) Math.max(0.5, thick * 0.16)));
        g.draw(shape);
        g.setColor(palette.paper());
        g.fill(new Ellipse2D.Double(-0.98 * length, -half * 0.45, 0.16 * length, half * 0.9));
        g.setTransform(kept);
    }
}
