package thrumwright.drawing.step;

import java.util.List;
import thrumwright.block.Leg;
import thrumwright.block.Row;
import thrumwright.block.Strand;

/**
 * A block's yarn as far as it is led at one stage of its working.
 *
 * @param strands as they lie then, going on to the hand
 * @param ways of the hand in this stage, along the yarn
 * @param sets rows that set out in this stage
 * @param push what else is done to the row
 * @param done whether the yarn has come to its end
 */
record Led(List<Strand> strands, List<List<Leg>> ways, List<Row> sets, Push push, boolean done) {
    /** What is done to a row besides leading its yarn. */
    enum Push {
        NONE,
        DOWN,
        OUT
    }

    /** One strand under way, and the way of the hand. */
    static Led along(List<Leg> legs, List<Leg> way) {
        return new Led(List.of(new Strand(legs)), List.of(way), List.of(), Push.NONE, false);
    }

    /** One strand, with an arrow beside it where a row sets out. */
    static Led setting(List<Leg> legs, Row row) {
        return new Led(List.of(new Strand(legs)), List.of(), List.of(row), Push.NONE, false);
    }

    /** One strand under way that is pressed into its place. */
    static Led pressed(List<Leg> legs) {
        return new Led(List.of(new Strand(legs)), List.of(), List.of(), Push.DOWN, false);
    }
}
