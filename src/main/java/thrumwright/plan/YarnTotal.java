package thrumwright.plan;

import thrumwright.yarn.Yarn;

/**
 * How much of one yarn the warp and both ends take, by itself and as strands of bundles; the design itself is the weaver's.
 *
 * @param inWarp mm
 * @param inEnds mm, as cut
 */
public record YarnTotal(Yarn yarn, double inWarp, double inEnds) {
    /** In mm, 0 or more. */
    public double length() {
        return inWarp + inEnds;
    }

    /** In grams, 0 or more. */
    public double grams() {
        return length() / 1e6 * yarn.tex();
    }
}
