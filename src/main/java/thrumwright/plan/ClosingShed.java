package thrumwright.plan;

import thrumwright.yarn.Yarn;

/**
 * How the shed closes towards warp loops. An end that is lifted in the middle of a gap g between the cloth and the loops
 * can be stretched by a share ε and no more, so that it opens by (g/2)·√((1 + ε)² − 1) (derived).
 *
 * @param hands below this gap the shed is too low for a butterfly, mm
 * @param needle below this gap it is too low for the weft on a needle, two thicknesses in its eye, mm
 */
public record ClosingShed(double hands, double needle) {
    /** How much a warp end can be stretched, as a share of its length (from memory). */
    public static final double STRETCH = 0.02;
    /** How thick a small butterfly is, mm (from memory). */
    public static final double BUTTERFLY = 15;

    private static final double SLOPE = Math.sqrt((1 + STRETCH) * (1 + STRETCH) - 1) / 2;

    static ClosingShed of(Yarn weft) {
        return new ClosingShed(BUTTERFLY / SLOPE, 2 * weft.diameter() / SLOPE);
    }

    /** How far the shed opens in a gap, mm, 0 or more, as the gap is. */
    public static double opening(double gap) {
        return SLOPE * gap;
    }
}
