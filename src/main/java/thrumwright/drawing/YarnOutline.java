package thrumwright.drawing;

import java.awt.geom.Path2D;
import java.util.stream.IntStream;

/**
 * The outline of a stretch of yarn on the page, with round ends but where it joins on.
 *
 * <p>The share is how much of its thickness is outlined; {@code up} is how far the outline is moved up the page, as a
 * share of the thickness, since light falls from above; {@code sunk} is how much of the outlined thickness it loses
 * where the yarn dips towards the plane of the warp, since no light falls there.
 */
final class YarnOutline {
    /** From so many page units outlines are curves; below, straight lines look the same. */
    private static final double CURVES_FROM = 3;
    /** Points nearer to an end than this share of the thickness would only turn the round end aside. */
    private static final double NEAR_END = 0.35;
    /** Of a cubic curve that comes nearest to a quarter of a circle. */
    private static final double QUARTER = 0.5523;

    private final double[] x;
    private final double[] y;
    private final double[] half;
    private final double[] nx;
    private final double[] ny;
    private final boolean curved;
    private final Stretch stretch;

    YarnOutline(View view, Stretch stretch, double share, double up, double sunk) {
        this.stretch = stretch;
        int[] kept = kept(stretch);
        int n = kept.length;
        x = new double[n];
        y = new double[n];
        half = new double[n];
        nx = new double[n];
        ny = new double[n];
        double thickest = 0;
        for (int i = 0; i < n; i++) {
            double width = view.length(stretch.width()[kept[i]]);
            double lift = stretch.lift()[kept[i]];
            x[i] = view.x(stretch.x()[kept[i]]);
            y[i] = view.y(stretch.y()[kept[i]]) - width * up;
            half[i] = width * share * (1 - sunk * (1 - lift)) / 2;
            thickest = Math.max(thickest, width);
        }
        curved = thickest >= CURVES_FROM;
        normals();
    }

    private static int[] kept(Stretch stretch) {
        int last = stretch.x().length - 1;
        double near = NEAR_END * stretch.thickest();
        return IntStream.rangeClosed(0, last)
                .filter(i -> i == 0 || i == last || apart(stretch, i, 0) > near && apart(stretch, i, last) > near)
                .toArray();
    }

    private static double apart(Stretch stretch, int a, int b) {
        return Math.hypot(stretch.x()[a] - stretch.x()[b], stretch.y()[a] - stretch.y()[b]);
    }

    /** Unit normals to the left of the way; where a yarn turns away from the eye, those nearby serve. */
    private void normals() {
        double fx = 1;
        double fy = 0;
        for (int i = 0; i < x.length; i++) {
            int from = Math.max(0, i - 1);
            int to = Math.min(x.length - 1, i + 1);
            double dx = x[to] - x[from];
            double dy = y[to] - y[from];
            double length = Math.hypot(dx, dy);
            if (length > 1e-6) {
                fx = dx / length;
                fy = dy / length;
            }
            nx[i] = fy;
            ny[i] = -fx;
        }
    }

    void addTo(Path2D path) {
        int last = x.length - 1;
        path.moveTo(sideX(0, 1), sideY(0, 1));
        for (int i = 0; i < last; i++) {
            side(path, i, i + 1, 1);
        }
        if (stretch.joinsAtEnd()) {
            path.lineTo(sideX(last, -1), sideY(last, -1));
        } else {
            cap(path, last, 1);
        }
        for (int i = last; i > 0; i--) {
            side(path, i, i - 1, -1);
        }
        if (!stretch.joinsAtStart()) {
            cap(path, 0, -1);
        }
        path.closePath();
    }

    private double sideX(int i, int side) {
        return x[i] + side * nx[i] * half[i];
    }

    private double sideY(int i, int side) {
        return y[i] + side * ny[i] * half[i];
    }

    /** From one point's side to the next one's, rounded so that both neighbours agree on the direction there. */
    private void side(Path2D path, int from, int to, int side) {
        double toX = sideX(to, side);
        double toY = sideY(to, side);
        if (!curved) {
            path.lineTo(toX, toY);
            return;
        }
        double fromX = sideX(from, side);
        double fromY = sideY(from, side);
        double length = Math.hypot(toX - fromX, toY - fromY) / 3;
        int way = Integer.signum(to - from);
        double[] leaves = tangent(from, side, way);
        double[] arrives = tangent(to, side, way);
        path.curveTo(
                fromX + leaves[0] * length,
                fromY + leaves[1] * length,
                toX - arrives[0] * length,
                toY - arrives[1] * length,
                toX,
                toY);
    }

    /** The direction of a side where it passes a point. */
    private double[] tangent(int i, int side, int way) {
        int before = Math.max(0, Math.min(x.length - 1, i - way));
        int after = Math.max(0, Math.min(x.length - 1, i + way));
        double dx = sideX(after, side) - sideX(before, side);
        double dy = sideY(after, side) - sideY(before, side);
        double length = Math.hypot(dx, dy);
        return length < 1e-9 ? new double[] {0, 0} : new double[] {dx / length, dy / length};
    }

    /** Half a circle from one side of an end to the other, bulging outwards. */
    private void cap(Path2D path, int i, int side) {
        double r = half[i];
        double ax = side * nx[i] * r;
        double ay = side * ny[i] * r;
        double fx = -ay;
        double fy = ax;
        if (!curved) {
            path.lineTo(x[i] + 0.7 * (ax + fx), y[i] + 0.7 * (ay + fy));
            path.lineTo(x[i] + fx, y[i] + fy);
            path.lineTo(x[i] + 0.7 * (fx - ax), y[i] + 0.7 * (fy - ay));
            path.lineTo(x[i] - ax, y[i] - ay);
            return;
        }
        quarter(path, x[i], y[i], ax, ay, fx, fy);
        quarter(path, x[i], y[i], fx, fy, -ax, -ay);
    }

    private static void quarter(Path2D path, double x, double y, double ax, double ay, double bx, double by) {
        path.curveTo(
                x + ax + bx * QUARTER,
                y + ay + by * QUARTER,
                x + bx + ax * QUARTER,
                y + by + ay * QUARTER,
                x + bx,
                y + by);
    }
}
