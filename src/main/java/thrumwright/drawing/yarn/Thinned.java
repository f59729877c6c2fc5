package thrumwright.drawing.yarn;

import java.util.ArrayList;
import java.util.List;

/** Leaves out the points of a line that can't be told from what lies between their neighbours. */
final class Thinned {
    private final List<double[]> points;
    private final double unseen;
    private final boolean[] kept;

    private Thinned(List<double[]> points, double unseen) {
        this.points = points;
        this.unseen = unseen;
        this.kept = new boolean[points.size()];
    }

    /**
     * The first point, the last, and those between that matter.
     *
     * @param points each with the same coordinates; those that aren't lengths count as if they were
     * @param unseen how far off doesn't matter
     */
    static List<double[]> of(List<double[]> points, double unseen) {
        Thinned thinned = new Thinned(points, unseen);
        int last = points.size() - 1;
        thinned.kept[0] = true;
        thinned.kept[last] = true;
        thinned.between(0, last);
        List<double[]> left = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            if (thinned.kept[i]) {
                left.add(points.get(i));
            }
        }
        return left;
    }

    private void between(int from, int to) {
        double farthest = unseen;
        int at = -1;
        for (int i = from + 1; i < to; i++) {
            double off = off(points.get(i), points.get(from), points.get(to));
            if (off > farthest) {
                farthest = off;
                at = i;
            }
        }
        if (at > 0) {
            kept[at] = true;
            between(from, at);
            between(at, to);
        }
    }

    /** How far a point lies from the straight line between two others. */
    private static double off(double[] point, double[] from, double[] to) {
        double dot = 0;
        double square = 0;
        for (int i = 0; i < point.length; i++) {
            dot += (point[i] - from[i]) * (to[i] - from[i]);
            square += (to[i] - from[i]) * (to[i] - from[i]);
        }
        double share = square == 0 ? 0 : Math.max(0, Math.min(1, dot / square));
        double sum = 0;
        for (int i = 0; i < point.length; i++) {
            double apart = point[i] - from[i] - share * (to[i] - from[i]);
            sum += apart * apart;
        }
        return Math.sqrt(sum);
    }
}
