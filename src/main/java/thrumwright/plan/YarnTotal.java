package thrumwright.plan;

import thrumwright.yarn.Yarn;

/**
 * How much of one yarn warp, ends, design and what is sewn on take, by itself and as strands of bundles.
 *
 * @param inWarp mm
 * @param inEnds mm, as cut
 * @param inDesign mm, as it was told or is assumed, without tails
 * @param sewnOn mm, in a cord along the edges, as cut
 */
public record YarnTotal(Yarn yarn, double inWarp, double inEnds, double inDesign, double sewnOn) {
    /** In mm, 0 or more. */
    public double length() {
        return besideDesign() + inDesign;
    }

    /** What is known whatever the design is, in mm, 0 or more. */
    public double besideDesign() {
        return inWarp + inEnds + sewnOn;
    }

    /** In grams, 0 or more. */
    public double grams() {
        return yarn.grams(length());
    }
}
