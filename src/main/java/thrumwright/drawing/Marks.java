package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import thrumwright.block.Setting;

/** What is drawn over the cloth and is no yarn: the line of a fold, and the frame of what comes out again. */
final class Marks {
    private final Graphics2D g;
    private final View view;
    private final Palette palette;

    /** @param view with y = 0 at the end's lowest line */
    Marks(Graphics2D g, View view, Palette palette) {
        this.g = g;
        this.view = view;
        this.palette = palette;
    }

    /** A fold line across the whole width: dashes, with a small wedge at either side. */
    void fold(Setting setting, double y) {
        double left = view.x(-1.6 * setting.spacing());
        double right = view.x(setting.span() + 1.6 * setting.spacing());
        double at = view.y(y);
        float unit = (float) Math.max(0.9, Math.min(1.8, view.length(setting.spacing()) * 0.2));
        float[] dashes = {unit * 5, unit * 3};
        line(left, right, at, palette.paper(), unit * 2, null);
        line(left, right, at, palette.accent(), unit, dashes);
        wedge(left, at, unit * 4.5, 1);
        wedge(right, at, unit * 4.5, -1);
    }

    private void line(double left, double right, double y, Color colour, float width, float[] dashes) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
        g.draw(new Line2D.Double(left, y, right, y));
    }

    private void wedge(double x, double y, double size, int direction) {
        Path2D wedge = new Path2D.Double();
        wedge.moveTo(x, y);
        wedge.lineTo(x - direction * size, y - size * 0.6);
        wedge.lineTo(x - direction * size, y + size * 0.6);
        wedge.closePath();
        g.fill(wedge);
    }

    /** A dotted frame round what comes out later, so that not only its paler colour says so. */
    void comesOut(Setting setting, double fromY, double toY) {
        double inset = view.length(setting.spacing()) * 0.9;
        double left = view.x(0) - inset;
        double right = view.x(setting.span()) + inset;
        float unit = (float) Math.max(0.8, Math.min(1.6, view.length(setting.spacing()) * 0.08));
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(
                unit, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {0.01f, unit * 2.6f}, 0));
        g.draw(new Rectangle2D.Double(left, view.y(toY), right - left, view.length(toY - fromY)));
    }
}
