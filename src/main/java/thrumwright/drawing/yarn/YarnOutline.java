package thrumwright.drawing.yarn;

import java.awt.geom.Path2D;

/**
 * The outline of a yarn on the page, with round ends but where it joins on.
 *
 * <p>The share is how much of its thickness is outlined; {@code up} is how far the outline is moved up the page, as a
 * share of the thickness, since light falls from above; {@code sunk} is how much of the outlined thickness it loses
 * where the yarn dips towards the plane of the warp, since no light falls there.
 */
final class YarnOutline {
    /** From so many page units outlines are curves; below, straight lines from point to point look the same. */
    private static final double CURVES_FROM = 9;
    /** From so many page units round ends are rounded by more than a corner. */
    private static final double ROUND_FROM = 4;
    /** Of a cubic curve that comes nearest to a quarter of a circle. */
    private static final double QUARTER = 0.5523;

    private final Path2D path;
    private final Spine spine;
    private final double share;
    private final double up;
    private final double sunk;
    private final boolean curved;

    private YarnOutline(Path2D path, Spine spine, double share, double up, double sunk) {
        this.path = path;
        this.spine = spine;
        this.share = share;
        this.up = up;
        this.sunk = sunk;
        curved = spine.thickest() * share >= CURVES_FROM || spine.stretch().loose();
    }

    static void add(Path2D path, Spine spine, double share, double up, double sunk) {
        new YarnOutline(path, spine, share, up, sunk).add();
    }

    private void add() {
        int last = spine.last();
        path.moveTo(sideX(0, 1), sideY(0, 1));
        for (int i = 0; i < last; i++) {
            side(i, i + 1, 1);
        }
        if (spine.stretch().joinsAtEnd()) {
            path.lineTo(sideX(last, -1), sideY(last, -1));
        } else {
            cap(last, 1);
        }
        for (int i = last; i > 0; i--) {
            side(i, i - 1, -1);
        }
        if (!spine.stretch().joinsAtStart()) {
            cap(0, -1);
        }
        path.closePath();
    }

    private double y(int i) {
        return spine.y()[i] - spine.width()[i] * up;
    }

    private double half(int i) {
        return spine.width()[i] * share * (1 - sunk * (1 - spine.lift()[i])) / 2;
    }

    private double sideX(int i, int side) {
        return spine.x()[i] + side * spine.nx()[i] * half(i);
    }

    private double sideY(int i, int side) {
        return y(i) + side * spine.ny()[i] * half(i);
    }

    /** From one point's side to the next one's, rounded so that both neighbours agree on the direction there. */
    private void side(int from, int to, int side) {
        double toX = sideX(to, side);
        double toY = sideY(to, side);
        if (!curved) {
            path.lineTo(toX, toY);
            return;
        }
        double fromX = sideX(from, side);
        double fromY = sideY(from, side);
        double length = Math.sqrt((toX - fromX) * (toX - fromX) + (toY - fromY) * (toY - fromY)) / 3;
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
        int before = Math.max(0, Math.min(spine.last(), i - way));
        int after = Math.max(0, Math.min(spine.last(), i + way));
        double dx = sideX(after, side) - sideX(before, side);
        double dy = sideY(after, side) - sideY(before, side);
        double length = Math.sqrt(dx * dx + dy * dy);
        return length < 1e-9 ? new double[] {0, 0} : new double[] {dx / length, dy / length};
    }

    /** Half a circle from one side of an end to the other, bulging outwards; a mere corner where nobody sees it. */
    private void cap(int i, int side) {
        double ax = side * spine.nx()[i] * half(i);
        double ay = side * spine.ny()[i] * half(i);
        double fx = -ay;
        double fy = ax;
        double x = spine.x()[i];
        double y = y(i);
        if (curved) {
            quarter(x, y, ax, ay, fx, fy);
            quarter(x, y, fx, fy, -ax, -ay);
        } else {
            if (half(i) * 2 >= ROUND_FROM) {
                path.lineTo(x + 0.7 * (ax + fx), y + 0.7 * (ay + fy));
                path.lineTo(x + fx, y + fy);
                path.lineTo(x + 0.7 * (fx - ax), y + 0.7 * (fy - ay));
            } else {
                path.lineTo(x + 0.8 * fx, y + 0.8 * fy);
            }
            path.lineTo(x - ax, y - ay);
        }
    }

    private void quarter(double x, double y, double ax, double ay, double bx, double by) {
        path.curveTo(
                x + ax + bx * QUARTER,
                y + ay + by * QUARTER,
                x + bx + ax * QUARTER,
                y + by + ay * QUARTER,
                x + bx,
                y + by);
    }
}
