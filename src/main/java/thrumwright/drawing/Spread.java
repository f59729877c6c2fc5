package thrumwright.drawing;

import java.util.ArrayDeque;
import java.util.Deque;

/** Moves labels apart so that none covers another. */
public final class Spread {
    private Spread() {}

    /**
     * Places in the same order, each as near to where it is wanted as the others allow: the sum of the squared ways is
     * the least possible, but for the limits. All are in the same unit.
     *
     * @param wanted in ascending order
     * @param apart the least distance between two
     * @param low the least place
     * @param high the greatest place; if there isn't room for all, the last ones go beyond it
     */
    public static double[] apart(double[] wanted, double apart, double low, double high) {
        Deque<Cluster> clusters = new ArrayDeque<>();
        for (int i = 0; i < wanted.length; i++) {
            Cluster cluster = new Cluster(i, 1, wanted[i] - i * apart);
            while (!clusters.isEmpty() && clusters.getLast().middle() >= cluster.middle()) {
                cluster = clusters.removeLast().joined(cluster);
            }
            clusters.addLast(cluster);
        }
        double most = high - (wanted.length - 1) * apart;
        double[] placed = new double[wanted.length];
        for (Cluster cluster : clusters) {
            double at = Math.max(low, Math.min(most, cluster.middle()));
            for (int i = cluster.first(); i < cluster.first() + cluster.size(); i++) {
                placed[i] = at + i * apart;
            }
        }
        return placed;
    }

    /**
     * Neighbours that touch, as if they had no size.
     *
     * @param middle the mean of where they are wanted
     */
    private record Cluster(int first, int size, double middle) {
        Cluster joined(Cluster next) {
            int both = size + next.size;
            return new Cluster(first, both, (middle * size + next.middle * next.size) / both);
        }
    }
}
