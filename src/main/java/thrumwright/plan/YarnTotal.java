package thrumwright.plan;

import thrumwright.yarn.Yarn;

/**
 * How much of one yarn warp, ends and design take, by itself and as strands of bundles.
 *
 * @param inWarp mm
 * @param inEnds mm, as cut
 * @param inDesign mm, as it was told or is assumed, without tails
 */
public record YarnTotal(Yarn yarn, double inWarp, double inEnds, double inDesign) {
    /** In mm, 0 or more. */
    public double length() {
        return inWarp + inEnds + inDesign;
    }

    /** What is known whatever the design is, in mm, 0 or more. */
    public double besideDesign() {
        return inWarp + inEnds;
    }

    /** In grams, 0 or more. */
    public double grams() {
        return yarn.grams(length());
    }
}
