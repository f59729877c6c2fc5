package thrumwright.plan.finding;

import thrumwright.block.Block;
import thrumwright.block.Passing;
import thrumwright.block.Side;
import thrumwright.block.Support;
import thrumwright.block.WarpLoops;
import thrumwright.piece.Datum;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/** What a finding goes by: a number in its unit, or something in the piece. How it is put is said where it is shown. */
public sealed interface Value {
    /** What a number is, which says how far it may be rounded. */
    enum Grain {
        /** A height or a depth, mm. */
        HEIGHT,
        /** A length that must hardly be rounded, mm. */
        FINE,
        /** What is cut from a yarn or measured across the warp, mm. */
        CUT,
        /** All there is of a yarn, mm. */
        TOTAL,
        /** A share of 1. */
        SHARE,
        COUNT
    }

    /** @param number in the unit of its grain; any */
    record OfNumber(double number, Grain grain) implements Value {}

    record OfYarn(Yarn yarn) implements Value {}

    record OfBlock(Block block) implements Value {}

    /** How a pick meets the outermost end at the side where it begins. */
    record OfMeeting(Passing passing, Side from) implements Value {}

    record OfSide(Side side) implements Value {}

    /** What a hem is to take. */
    record OfSupport(Support support) implements Value {}

    /** What warp loops lie round. */
    record OfLoops(WarpLoops loops) implements Value {}

    /** @param mm from its datum; any */
    record OfAbove(double mm, Datum datum) implements Value {}

    /**
     * A height as it is said at an end.
     *
     * @param mm along the warp from the loom's own datum, any
     */
    static Value above(Plan plan, Place place, double mm) {
        return new OfAbove(plan.above(place, mm), plan.datum(place));
    }

    /** @param mm a height or a depth, mm; any */
    static Value height(double mm) {
        return new OfNumber(mm, Grain.HEIGHT);
    }

    /** @param mm a length that must hardly be rounded, mm; any */
    static Value fine(double mm) {
        return new OfNumber(mm, Grain.FINE);
    }
}
