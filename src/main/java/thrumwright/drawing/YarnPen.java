package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.List;

/** Draws stretches of yarn as round cords with an edge, a ridge of light and, where they are big enough, their ply. */
final class YarnPen {
    /** Below so many page units a yarn is too thin to show its ply. */
    private static final double PLY_FROM = 5;

    private final Graphics2D g;
    private final View view;
    private final Color body;
    private final Color edge;
    private final Color light;
    private final Color ply;
    private final int plies;

    YarnPen(Graphics2D g, View view, Color colour, int plies) {
        this.g = g;
        this.view = view;
        this.body = colour;
        boolean dark = luminance(colour) < 0.12;
        this.edge = Palette.mixed(colour, Color.BLACK, dark ? 0.75 : 0.5);
        this.light = Palette.mixed(colour, Color.WHITE, dark ? 0.3 : 0.38);
        this.ply = Palette.mixed(colour, Color.BLACK, 0.26);
        this.plies = plies;
    }

    private static double luminance(Color colour) {
        return (0.2126 * colour.getRed() + 0.7152 * colour.getGreen() + 0.0722 * colour.getBlue()) / 255;
    }

    /** One above the other: each is drawn whole before the next. */
    void drawInOrder(List<Stretch> stretches) {
        for (Stretch stretch : stretches) {
            drawTogether(List.of(stretch));
        }
    }

    /** Side by side: all bodies, then all lights, in as few strokes as possible. */
    void drawTogether(List<Stretch> stretches) {
        if (stretches.isEmpty()) {
            return;
        }
        Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
        Path2D ridge = new Path2D.Double(Path2D.WIND_NON_ZERO);
        Path2D strokes = new Path2D.Double();
        double thickest = 0;
        for (Stretch stretch : stretches) {
            outline(outline, stretch, 1, 0);
            outline(ridge, stretch, 0.30, 0.17);
            double width = view.length(max(stretch.width()));
            thickest = Math.max(thickest, width);
            if (width >= PLY_FROM) {
                ply(strokes, stretch);
            }
        }
        g.setColor(body);
        g.fill(outline);
        if (thickest >= PLY_FROM) {
            g.setColor(ply);
            g.setStroke(new BasicStroke((float) (thickest * 0.06), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(strokes);
        }
        if (thickest >= 2) {
            g.setColor(light);
            g.fill(ridge);
        }
        g.setColor(edge);
        g.setStroke(new BasicStroke(
                (float) Math.max(0.25, Math.min(1.2, thickest * 0.08)), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(outline);
    }

    private static double max(double[] values) {
        double max = 0;
        for (double value : values) {
            max = Math.max(max, value);
        }
        return max;
    }

    /**
     * The outline of a stretch with round ends.
     *
     * @param share of its thickness
     * @param lift how far it is moved up, as a share of the thickness: where the light falls
     */
    private void outline(Path2D path, Stretch stretch, double share, double lift) {
        int n = stretch.x().length;
        double[] px = new double[n];
        double[] py = new double[n];
        double[] nx = new double[n];
        double[] ny = new double[n];
        for (int i = 0; i < n; i++) {
            px[i] = view.x(stretch.x()[i]);
            py[i] = view.y(stretch.y()[i]) - view.length(stretch.width()[i]) * lift;
        }
        normals(px, py, nx, ny);
        double half = view.length(1) * share / 2;
        path.moveTo(px[0] + nx[0] * half * stretch.width()[0], py[0] + ny[0] * half * stretch.width()[0]);
        for (int i = 1; i < n; i++) {
            double r = half * stretch.width()[i];
            path.lineTo(px[i] + nx[i] * r, py[i] + ny[i] * r);
        }
        cap(path, px[n - 1], py[n - 1], nx[n - 1], ny[n - 1], half * stretch.width()[n - 1]);
        for (int i = n - 2; i >= 0; i--) {
            double r = half * stretch.width()[i];
            path.lineTo(px[i] - nx[i] * r, py[i] - ny[i] * r);
        }
        cap(path, px[0], py[0], -nx[0], -ny[0], half * stretch.width()[0]);
        path.closePath();
    }

    /** Half a circle from the side of the normal to the other, bulging forward. */
    private static void cap(Path2D path, double x, double y, double nx, double ny, double r) {
        double k = 0.5523 * r;
        double fx = -ny;
        double fy = nx;
        path.curveTo(
                x + nx * r + fx * k, y + ny * r + fy * k,
                x + fx * r + nx * k, y + fy * r + ny * k,
                x + fx * r, y + fy * r);
        path.curveTo(
                x + fx * r - nx * k,
                y + fy * r - ny * k,
                x - nx * r + fx * k,
                y - ny * r + fy * k,
                x - nx * r,
                y - ny * r);
    }

    /** Unit normals to the left of the way on the page; where a yarn turns away from the eye, those nearby serve. */
    private static void normals(double[] px, double[] py, double[] nx, double[] ny) {
        int n = px.length;
        double fx = 1;
        double fy = 0;
        for (int i = 0; i < n; i++) {
            int from = Math.max(0, i - 1);
            int to = Math.min(n - 1, i + 1);
            double dx = px[to] - px[from];
            double dy = py[to] - py[from];
            double length = Math.hypot(dx, dy);
            if (length > 1e-6) {
                fx = dx / length;
                fy = dy / length;
            }
            nx[i] = fy;
            ny[i] = -fx;
        }
    }

    /** Short slanted strokes across the yarn: where one ply passes under the next. */
    private void ply(Path2D strokes, Stretch stretch) {
        double thick = view.length(max(stretch.width()));
        double apart = thick * (plies <= 2 ? 0.62 : 0.5);
        double carried = apart / 2;
        for (int i = 1; i < stretch.x().length; i++) {
            double x0 = view.x(stretch.x()[i - 1]);
            double y0 = view.y(stretch.y()[i - 1]);
            double dx = view.x(stretch.x()[i]) - x0;
            double dy = view.y(stretch.y()[i]) - y0;
            double length = Math.hypot(dx, dy);
            if (length < 1e-6) {
                continue;
            }
            double ux = dx / length;
            double uy = dy / length;
            // the slant must not depend on which way the row runs
            double sx = ux < 0 ? -ux : ux;
            double sy = ux < 0 ? -uy : uy;
            while (carried < length) {
                double half = view.length(stretch.width()[i]) * 0.40;
                double cx = x0 + ux * carried;
                double cy = y0 + uy * carried;
                double lean = half * 0.55;
                strokes.moveTo(cx - sx * lean - sy * -half, cy - sy * lean + sx * half);
                strokes.lineTo(cx + sx * lean + sy * half, cy + sy * lean - sx * half);
                carried += apart;
            }
            carried -= length;
        }
    }
}
