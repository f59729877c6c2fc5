package thrumwright.drawing.piece;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import thrumwright.block.KnotRows;
import thrumwright.block.Setting;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Mitre;

/** What is drawn over the cloth and is no yarn: the line of a fold, the frame of what comes out again, which warp ends
 * belong together. */
public final class Marks {
    /** How far the line of a fold reaches beyond the edge ends, and the frame of what comes out: distances between ends. */
    static final double FOLD = 1.6;

    static final double FRAME = 0.9;

    /** More rows of knots than this aren't told apart. */
    private static final int MOST_ROWS = 2;

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
        double left = view.x(-FOLD * setting.spacing());
        double right = view.x(setting.span() + FOLD * setting.spacing());
        double at = view.y(y);
        float unit = (float) Math.max(0.9, Math.min(1.8, view.length(setting.spacing()) * 0.2));
        float[] dashes = {unit * 5, unit * 3};
        line(left, right, at, palette.paper(), unit * 2, null);
        line(left, right, at, palette.accent(), unit, dashes);
        wedge(left, at, unit * 4.5, 1);
        wedge(right, at, unit * 4.5, -1);
    }

    /**
     * Where both corners of a hem are turned in: a dashed line from either side to the outer edge.
     *
     * @param outward −1 where the hem lies below its fold, 1 where above
     */
    void mitre(Setting setting, Hem hem, Mitre mitre, int outward) {
        double side = -setting.spacing() / 2;
        double far = setting.span() - side;
        double from = view.y(hem.foldLine() + outward * mitre.back());
        double to = view.y(hem.foldLine() + outward * hem.cloth());
        float unit = (float) Math.max(0.9, Math.min(1.8, view.length(setting.spacing()) * 0.2));
        Path2D lines = new Path2D.Double(new Line2D.Double(view.x(side), from, view.x(side + mitre.leg()), to));
        lines.append(new Line2D.Double(view.x(far), from, view.x(far - mitre.leg()), to), false);
        g.setColor(palette.paper());
        g.setStroke(new BasicStroke(unit * 2));
        g.draw(lines);
        g.setColor(palette.accent());
        float[] dashes = {unit * 3, unit * 2};
        g.setStroke(new BasicStroke(unit, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
        g.draw(lines);
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
        double inset = view.length(setting.spacing()) * FRAME;
        double left = view.x(0) - inset;
        double right = view.x(setting.span()) + inset;
        float unit = (float) Math.max(0.8, Math.min(1.6, view.length(setting.spacing()) * 0.08));
        Rectangle2D frame = new Rectangle2D.Double(left, view.y(toY), right - left, view.length(toY - fromY));
        Rectangle2D seen = g.getClipBounds();
        if (seen != null && (frame.getMinY() - unit > seen.getMaxY() || frame.getMaxY() + unit < seen.getMinY())) {
            return;
        }
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(
                unit, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {0.01f, unit * 2.6f}, 0));
        g.draw(frame);
    }

    /**
     * Which warp ends are worked together: a brace for each group, on the side away from the cloth, and for each row of
     * knots; a small loop for each end that goes by itself.
     *
     * @param edge where the cloth ends that stays
     * @param outward the way from the cloth to the loose ends: −1 down, +1 up
     */
    void finish(Setting setting, Finish finish, double edge, int outward) {
        double s = setting.spacing();
        double depth = Math.min(0.75 * s, 3);
        Path2D braces = new Path2D.Double();
        if (finish.block() instanceof KnotRows knots) {
            int rows = Math.min(knots.rows(), MOST_ROWS);
            double each = outward * depth / rows;
            for (int row = 0; row < rows; row++) {
                for (KnotRows.Bunch bunch : knots.bunches(setting.ends(), row)) {
                    group(braces, s, bunch.first(), bunch.count(), edge + row * each, each);
                }
            }
        } else {
            groups(braces, s, finish, edge, outward * depth);
        }
        float unit = (float) Math.max(0.7, Math.min(1.4, view.length(s) * 0.1));
        stroke(braces, palette.paper(), unit * 2);
        stroke(braces, palette.ink(), unit);
    }

    private void groups(Path2D braces, double s, Finish finish, double edge, double depth) {
        boolean single = !finish.block().hangs();
        int end = 0;
        for (int size : finish.groups()) {
            for (int i = 0; single && i < size; i++) {
                brace(braces, (end + i - 0.28) * s, (end + i + 0.28) * s, edge, depth);
            }
            if (!single) {
                group(braces, s, end, size, edge, depth);
            }
            end += size;
        }
    }

    private void group(Path2D braces, double s, int first, int count, double edge, double depth) {
        brace(braces, (first - 0.36) * s, (first + count - 0.64) * s, edge, depth);
    }

    private void brace(Path2D path, double from, double to, double edge, double depth) {
        path.moveTo(view.x(from), view.y(edge));
        path.curveTo(
                view.x(from),
                view.y(edge + 1.35 * depth),
                view.x(to),
                view.y(edge + 1.35 * depth),
                view.x(to),
                view.y(edge));
    }

    private void stroke(Path2D path, Color colour, float width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }
}
