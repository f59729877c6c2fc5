package thrumwright.drawing;

/** Moves labels apart so that none covers another. */
public final class Spread {
    private Spread() {}

    /**
     * Places in the same order, each as near to where it is wanted as the others allow.
     *
     * @param wanted in ascending order
     * @param apart the least distance between two
     * @param low the least place
     * @param high the greatest place; if there isn't room for all, the last ones go beyond it
     */
    public static double[] apart(double[] wanted, double apart, double low, double high) {
        double[] placed = wanted.clone();
        for (int i = placed.length - 1; i >= 0; i--) {
            double most = i == placed.length - 1 ? high : placed[i + 1] - apart;
            placed[i] = Math.min(placed[i], most);
        }
        for (int i = 0; i < placed.length; i++) {
            double least = i == 0 ? low : placed[i - 1] + apart;
            placed[i] = Math.max(placed[i], least);
        }
        return placed;
    }
}
