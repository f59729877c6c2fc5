package thrumwright.output.vector;

/**
 * A cubic curve in the plane: two ends, and two points that lead it from one to the other.
 *
 * @param p eight coordinates, x and y by turns
 */
record Bend(double[] p) {
    private static final double NOTHING = 1e-9;

    double x(double t) {
        return at(t, 0);
    }

    double y(double t) {
        return at(t, 1);
    }

    private double at(double t, int axis) {
        double s = 1 - t;
        return s * s * s * p[axis]
                + 3 * s * s * t * p[2 + axis]
                + 3 * s * t * t * p[4 + axis]
                + t * t * t * p[6 + axis];
    }

    /** Its direction at the beginning, of length 1; nothing if it has none. */
    double[] leaves() {
        return direction(0, 2, 4, 6);
    }

    /** Its direction at the end, of length 1; nothing if it has none. */
    double[] arrives() {
        double[] back = direction(6, 4, 2, 0);
        return new double[] {-back[0], -back[1]};
    }

    /** From the first of its points to the next that lies elsewhere. */
    private double[] direction(int from, int... others) {
        for (int to : others) {
            double dx = p[to] - p[from];
            double dy = p[to + 1] - p[from + 1];
            double length = far(dx, dy);
            if (length > NOTHING) {
                return new double[] {dx / length, dy / length};
            }
        }
        return new double[] {0, 0};
    }

    /** How far a place on it lies from the place where a point would be nearest: a better guess of t. */
    double nearer(double t, double toX, double toY) {
        double s = 1 - t;
        double[] d = new double[4];
        for (int axis = 0; axis < 2; axis++) {
            double a = p[2 + axis] - p[axis];
            double b = p[4 + axis] - p[2 + axis];
            double c = p[6 + axis] - p[4 + axis];
            d[axis] = 3 * (s * s * a + 2 * s * t * b + t * t * c);
            d[2 + axis] = 6 * (s * (b - a) + t * (c - b));
        }
        double offX = x(t) - toX;
        double offY = y(t) - toY;
        double slope = d[0] * d[0] + d[1] * d[1] + offX * d[2] + offY * d[3];
        return Math.abs(slope) < NOTHING ? t : Math.max(0, Math.min(1, t - (offX * d[0] + offY * d[1]) / slope));
    }

    /** Whether nobody can tell it from a straight line. */
    boolean straight(double unseen) {
        return between(p[0], p[1], p[2], p[3], p[6], p[7], unseen)
                && between(p[0], p[1], p[4], p[5], p[6], p[7], unseen);
    }

    /** Whether a point can't be told from one on the straight line between two others. */
    static boolean between(double ax, double ay, double x, double y, double bx, double by, double unseen) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / square;
        double kept = Math.max(0, Math.min(1, share));
        return far(x - ax - kept * dx, y - ay - kept * dy) <= unseen;
    }

    /** As {@link Math#hypot}, which is careful of numbers that no page has and takes ten times as long. */
    static double far(double dx, double dy) {
        return Math.sqrt(dx * dx + dy * dy);
    }
}
