package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Palette;
import thrumwright.yarn.Colour;

/** Boxes to tick, and dots in a yarn's colour, or the grey that stands for it. */
public final class TickMarks {
    private TickMarks() {}

    /** A box whose side is {@code size} points, more than 0. */
    public static void box(Graphics2D g, double x, double y, double size, Palette palette) {
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke((float) Math.max(0.9, size * 0.07)));
        g.draw(new Rectangle2D.Double(x, y, size, size));
    }

    /** The tick in a box whose side is {@code size} points, more than 0. */
    public static void tick(Graphics2D g, double x, double y, double size, Palette palette) {
        Path2D tick = new Path2D.Double();
        tick.moveTo(x + 0.2 * size, y + 0.55 * size);
        tick.lineTo(x + 0.42 * size, y + 0.78 * size);
        tick.lineTo(x + 0.82 * size, y + 0.24 * size);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke((float) Math.max(1.1, size * 0.12), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(tick);
    }

    /** A dot {@code size} points across, more than 0. */
    public static void dot(Graphics2D g, double x, double y, double size, Colour colour, Palette palette) {
        Ellipse2D dot = new Ellipse2D.Double(x, y, size, size);
        g.setColor(palette.yarn(colour));
        g.fill(dot);
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(0.7f));
        g.draw(dot);
    }
}
