package thrumwright.drawing.hem;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Support;
import thrumwright.plan.Hem;

/**
 * A hem with its bar in it: the front hangs straight, the cloth goes round the bar at the fold, and the turned-back layer
 * runs taut from the bar to its seam on the front. The cloth keeps its length, so that the hem is less deep than when it lies
 * flat (derived).
 */
final class SleeveLine implements HemLine {
    private static final int ROUND = 48;

    /** How far the front is followed, mm beyond the fold. */
    private static final double FAR = 1000;

    private final Hem hem;
    private final double wide;
    private final double high;
    private final List<Point2D> points;
    private final double[] along;
    private final double edge;

    private SleeveLine(Hem hem, double wide, double high, List<Point2D> back, List<Point2D> front, double edge) {
        this.hem = hem;
        this.wide = wide;
        this.high = high;
        this.edge = edge;
        points = new ArrayList<>(back);
        int fold = points.size() - 1;
        points.addAll(front);
        along = new double[points.size()];
        for (int i = 1; i < along.length; i++) {
            along[i] = along[i - 1] + points.get(i).distance(points.get(i - 1));
        }
        double shift = hem.cloth() - along[fold];
        for (int i = 0; i < along.length; i++) {
            along[i] += shift;
        }
    }

    /** Empty if nothing slides into the hem, or if it has no room, or if a band is sewn over it. */
    static Optional<SleeveLine> of(Hem hem) {
        return hem.sleeve()
                .filter(Hem.Sleeve::slidesIn)
                .filter(sleeve -> hem.band().isEmpty())
                .flatMap(sleeve -> round(hem, sleeve.support()));
    }

    /** The corner of a slat, as a share of its thickness. */
    static final double CORNER = 0.25;

    private static Optional<SleeveLine> round(Hem hem, Support support) {
        double half = hem.thickness() / 2;
        double wide = support.thick() / 2 + half;
        double high = support.size().mm() / 2 + half;
        double corner = half + support.thick() * (support.kind() == Support.Kind.SLAT ? CORNER : 0.5);
        List<Point2D> round = outline(wide, high, corner);
        double inner = hem.firstTurn().map(turn -> turn + Math.PI * half / 2).orElse(0.0);
        double length = hem.cloth() - inner;
        double z = -hem.thickness() * hem.bends();
        double low = 2 * high;
        if (length(taut(round, new Point2D.Double(z, low))) > length) {
            return Optional.empty();
        }
        double top = low + length;
        for (int i = 0; i < 50; i++) {
            double middle = (low + top) / 2;
            if (length(taut(round, new Point2D.Double(z, middle))) > length) {
                top = middle;
            } else {
                low = middle;
            }
        }
        List<Point2D> back = new ArrayList<>(taut(round, new Point2D.Double(z, low)));
        hem.firstTurn().ifPresent(turn -> back.addAll(turnedIn(back, half, turn)));
        Collections.reverse(back);
        return Optional.of(new SleeveLine(hem, wide, high, back, front(round, wide, corner), low));
    }

    /** From the lowest point round the back to the highest: the cloth's mid-plane round a bar that touches the front. */
    private static List<Point2D> outline(double wide, double high, double corner) {
        List<Point2D> points = new ArrayList<>();
        points.add(new Point2D.Double(-wide, 0));
        for (int i = 0; i <= ROUND; i++) {
            double angle = Math.PI * i / ROUND;
            boolean lower = i <= ROUND / 2;
            double x = -2 * wide + corner - corner * Math.sin(angle);
            double y = (lower ? corner : 2 * high - corner) - corner * Math.cos(angle);
            points.add(new Point2D.Double(x, y));
        }
        return points;
    }

    /** From the lowest point to the front and up. */
    private static List<Point2D> front(List<Point2D> round, double wide, double corner) {
        List<Point2D> points = new ArrayList<>();
        for (Point2D point : round.subList(1, ROUND / 2 + 2)) {
            points.add(new Point2D.Double(-2 * wide - point.getX(), point.getY()));
        }
        points.add(new Point2D.Double(0, corner + FAR));
        return points;
    }

    /** Along the outline as far as it must, and straight to the seam. */
    private static List<Point2D> taut(List<Point2D> round, Point2D seam) {
        int leaves = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < round.size(); i++) {
            double angle = Math.atan2(
                    seam.getX() - round.get(i).getX(),
                    seam.getY() - round.get(i).getY());
            if (angle >= most) {
                most = angle;
                leaves = i;
            }
        }
        List<Point2D> path = new ArrayList<>(round.subList(0, leaves + 1));
        path.add(seam);
        return path;
    }

    /** What is turned in first: round a small bend and back down, beside the layer that it is turned from. */
    private static List<Point2D> turnedIn(List<Point2D> back, double half, double turn) {
        Point2D seam = back.get(back.size() - 1);
        Point2D before = back.get(back.size() - 2);
        double length = seam.distance(before);
        double alongX = (seam.getX() - before.getX()) / length;
        double alongY = (seam.getY() - before.getY()) / length;
        List<Point2D> points = new ArrayList<>();
        for (int i = 1; i <= ROUND / 4; i++) {
            double angle = Math.PI * 4 * i / ROUND;
            double in = half - half * Math.cos(angle);
            double up = half * Math.sin(angle);
            points.add(new Point2D.Double(
                    seam.getX() + alongX * up + alongY * in, seam.getY() + alongY * up - alongX * in));
        }
        Point2D bent = points.get(points.size() - 1);
        double rest = Math.max(0, turn - Math.PI * half / 2);
        points.add(new Point2D.Double(bent.getX() - alongX * rest, bent.getY() - alongY * rest));
        return points;
    }

    private static double length(List<Point2D> path) {
        double length = 0;
        for (int i = 1; i < path.size(); i++) {
            length += path.get(i).distance(path.get(i - 1));
        }
        return length;
    }

    @Override
    public double[] at(double u) {
        int i = 1;
        while (i < along.length - 1 && along[i] < u) {
            i++;
        }
        Point2D from = points.get(i - 1);
        Point2D to = points.get(i);
        double share = (u - along[i - 1]) / Math.max(1e-9, along[i] - along[i - 1]);
        return new double[] {
            from.getX() + share * (to.getX() - from.getX()),
            from.getY() + share * (to.getY() - from.getY()),
            Math.atan2(to.getY() - from.getY(), to.getX() - from.getX())
        };
    }

    @Override
    public double outside() {
        return hem.thickness() / 2;
    }

    @Override
    public double depth() {
        double bend = hem.firstTurn().isPresent() ? hem.thickness() : 0;
        return edge + bend + outside();
    }

    @Override
    public double behind() {
        return 2 * wide + hem.thickness() / 2;
    }

    /** The middle of the bar, mm. */
    Point2D bar() {
        return new Point2D.Double(-wide, high);
    }
}
