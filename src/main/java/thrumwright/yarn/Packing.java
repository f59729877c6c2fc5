package thrumwright.yarn;

/**
 * How wide a bundle of equal round strands is: the radius of the smallest circle round n unit circles, from the
 * published table of equal circles in a circle (n = 13 to 18: from memory).
 */
public final class Packing {
    private static final double[] RATIO = {
        1, 2, 2.1547, 2.4142, 2.7013, 3, 3, 3.3048, 3.6131, 3.8130, 3.9238, 4.0296, 4.2361, 4.3284, 4.5214, 4.6154,
        4.7920, 4.8637, 4.8637
    };
    /** The largest bundle that the table holds. */
    public static final int MOST = RATIO.length;

    private Packing() {}

    /**
     * Bundle diameter over strand diameter, a share of 1 or more.
     *
     * @param strands 1 to {@link #MOST}; a larger bundle is filled as densely as the largest in the table
     */
    public static double ratio(int strands) {
        if (strands < 1) {
            throw new IllegalArgumentException("a bundle has at least one strand");
        }
        return strands <= MOST ? RATIO[strands - 1] : RATIO[MOST - 1] * Math.sqrt((double) strands / MOST);
    }
}
