package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.HandWay;

/**
 * A bundle of warp ends in an overhand knot, the trefoil: down, in a loop to the side and over itself, round behind itself and
 * through the loop. Its way is one line through space; where it passes over and under itself is cut, and what lies under is
 * drawn first. Open or tight, it is the same way in another size.
 *
 * @param x of the bundle above it, page units
 * @param y of the upper edge of its core, page units
 * @param unit half as wide as its core, page units, more than 0
 * @param ends number of warp ends in it
 * @param thick how thick each is drawn, page units
 */
record OverhandKnot(double x, double y, double unit, int ends, double thick) {
    /** Its core: across, down, and towards the eye. */
    private static final double[][] CORE = {
        {0, -0.1, -0.6},
        {0, 0.18, -1},
        {0, 0.75, 1},
        {0.15, 1.25, 0.2},
        {0.6, 1.6, -1},
        {1.12, 1.35, -0.3},
        {1.25, 0.75, 0},
        {0.8, 0.25, 0.6},
        {0, 0.12, 1},
        {-0.72, 0.1, 0.4},
        {-1, 0.45, 0},
        {-0.7, 0.78, -0.5},
        {0, 0.8, -1},
        {0.42, 1.05, 0.3},
        {0.55, 1.6, 1},
        {0.45, 2.1, 0.6}
    };
    /** Where the loop is laid, and where the tips have come through: points of the whole way, with one before its core. */
    static final int LOOPED = 10;

    static final int THROUGH = CORE.length;
    private static final int STEPS = 8;
    /** Of a bundle's thickness: the unit of a knot drawn tight. */
    private static final double TIGHT = 0.7;

    /** One of its ends between two crossings, in front of what it crosses or behind. */
    private record Side(boolean front, Path2D path) {}

    /** Drawn tight in a bundle so thick, page units, whose ends can't be told apart any more. */
    static OverhandKnot tight(double x, double y, double bundle) {
        return new OverhandKnot(x, y, TIGHT * bundle, 2, bundle / 1.85);
    }

    /** How thick so many ends are together when they are drawn tight. */
    static double bundle(int ends, double thick) {
        return thick * (1 + 0.3 * (ends - 1));
    }

    /** Where the bundle leaves it. */
    double below() {
        return y + 2.1 * unit;
    }

    double leaves() {
        return x + 0.45 * unit;
    }

    /**
     * Draws its way from the bundle above.
     *
     * @param from y of where the bundle comes from
     * @param to y to which it goes on, or NaN where it ends in the hand
     * @param last the last point of the way
     */
    void draw(EdgePen pen, Color colour, double from, double to, int last) {
        List<Side> all = cut(line(from, to, last));
        all.stream().filter(side -> !side.front()).forEach(side -> pen.cut(side.path(), thick, colour));
        all.stream().filter(Side::front).forEach(side -> pen.cut(side.path(), thick, colour));
    }

    /** The way of the hand from one point of it to another. */
    List<HandWay.Bit> way(int first, int last) {
        List<double[]> line = smooth(points(y - unit, Double.NaN, last));
        List<HandWay.Bit> parts = new ArrayList<>();
        int begin = first * STEPS;
        for (int i = begin + 1; i < line.size(); i++) {
            boolean hidden = line.get(i)[2] < -0.35;
            boolean ends = i == line.size() - 1;
            if (ends || hidden != line.get(i + 1)[2] < -0.35) {
                parts.add(part(line.subList(begin, i + 1), hidden));
                begin = i;
            }
        }
        return parts;
    }

    private static HandWay.Bit part(List<double[]> line, boolean hidden) {
        return new HandWay.Bit(
                line.stream().mapToDouble(point -> point[0]).toArray(),
                line.stream().mapToDouble(point -> point[1]).toArray(),
                hidden);
    }

    /** Its middle line: across, down, and towards the eye. */
    List<double[]> line(double from, double to, int last) {
        return smooth(points(from, to, last));
    }

    private List<double[]> points(double from, double to, int last) {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {x, from, -0.3});
        for (int i = 0; i < Math.min(last, CORE.length); i++) {
            points.add(new double[] {x + unit * CORE[i][0], y + unit * CORE[i][1], CORE[i][2]});
        }
        if (!Double.isNaN(to)) {
            points.add(new double[] {leaves(), to, 0.6});
        }
        return points;
    }

    /** A smooth line through those points. */
    private static List<double[]> smooth(List<double[]> points) {
        List<double[]> line = new ArrayList<>();
        int all = points.size();
        for (int i = 0; i < all - 1; i++) {
            for (int step = 0; step < STEPS; step++) {
                line.add(between(
                        points.get(Math.max(0, i - 1)),
                        points.get(i),
                        points.get(i + 1),
                        points.get(Math.min(all - 1, i + 2)),
                        (double) step / STEPS));
            }
        }
        line.add(points.get(all - 1));
        return line;
    }

    private static double[] between(double[] before, double[] from, double[] to, double[] after, double share) {
        double[] point = new double[3];
        double t = share;
        for (int i = 0; i < 3; i++) {
            double slopeFrom = (to[i] - before[i]) / 2;
            double slopeTo = (after[i] - from[i]) / 2;
            point[i] = (2 * t * t * t - 3 * t * t + 1) * from[i]
                    + (t * t * t - 2 * t * t + t) * slopeFrom
                    + (3 * t * t - 2 * t * t * t) * to[i]
                    + (t * t * t - t * t) * slopeTo;
        }
        return point;
    }

    /** The bundle's ends side by side, cut where the way comes to the front or goes to the back. */
    private List<Side> cut(List<double[]> line) {
        List<Side> sides = new ArrayList<>();
        int begin = 0;
        for (int i = 1; i < line.size(); i++) {
            boolean ends = i == line.size() - 1;
            if (ends || line.get(i)[2] > 0 != line.get(i + 1)[2] > 0) {
                // a little beyond, so that nothing gapes
                int to = Math.min(line.size() - 1, i + 1);
                boolean front = line.get((begin + i) / 2)[2] > 0;
                for (int end = 0; end < ends(); end++) {
                    sides.add(new Side(front, side(line, begin, to, end)));
                }
                begin = i;
            }
        }
        return sides;
    }

    private Path2D side(List<double[]> line, int from, int to, int end) {
        double aside = (end - (ends - 1) / 2.0) * 0.85 * thick;
        List<double[]> beside = new ArrayList<>();
        for (int at = from; at <= to; at++) {
            double[] before = line.get(Math.max(0, at - 1));
            double[] after = line.get(Math.min(line.size() - 1, at + 1));
            double dx = after[0] - before[0];
            double dy = after[1] - before[1];
            double share = aside / Math.max(1e-9, Math.hypot(dx, dy));
            beside.add(new double[] {line.get(at)[0] + dy * share, line.get(at)[1] - dx * share});
        }
        return curve(beside);
    }

    /** A smooth line through those points, as curves. */
    private static Path2D curve(List<double[]> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0)[0], points.get(0)[1]);
        int last = points.size() - 1;
        for (int i = 0; i < last; i++) {
            double[] before = points.get(Math.max(0, i - 1));
            double[] from = points.get(i);
            double[] to = points.get(i + 1);
            double[] after = points.get(Math.min(last, i + 2));
            path.curveTo(
                    from[0] + (to[0] - before[0]) / 6,
                    from[1] + (to[1] - before[1]) / 6,
                    to[0] - (after[0] - from[0]) / 6,
                    to[1] - (after[1] - from[1]) / 6,
                    to[0],
                    to[1]);
        }
        return path;
    }
}
