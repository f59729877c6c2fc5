package thrumwright.block;

import java.util.Optional;

/**
 * One pass of the yarn across the warp.
 *
 * @param number counted from 1 within the block
 * @param shed of a plain pick; empty where a row uses none
 * @param from the side at which it begins
 * @param lean of a twined row's or a soumak row's stitches
 */
public record Row(int number, Optional<Shed> shed, Side from, Optional<Lean> lean) {
    /** The side at which it ends. */
    public Side to() {
        return from.other();
    }

    /**
     * How a plain pick meets the outermost end at the side where it begins; empty where a row uses no shed.
     *
     * @param ends number of warp ends, 1 or more
     */
    public Optional<Passing> meets(int ends) {
        return shed.map(one -> one.meets(from, ends));
    }

    /**
     * On which face of the outermost end its yarn lies when it is at its side's end: a row without a shed brings it to the front.
     *
     * @param ends number of warp ends, 1 or more
     */
    public Passing leaves(int ends) {
        return shed.map(one -> one.meets(to(), ends)).orElse(Passing.OVER);
    }
}
