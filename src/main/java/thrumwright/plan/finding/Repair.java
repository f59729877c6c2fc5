package thrumwright.plan.finding;

import java.util.List;
import java.util.Objects;
import thrumwright.block.Block;
import thrumwright.measure.Length;
import thrumwright.piece.Meant;
import thrumwright.piece.Place;
import thrumwright.yarn.Usage;

/**
 * A thing to do about a finding: what it would change and to how much. Whoever edits pieces does it.
 */
public sealed interface Repair {
    /** Weave a block with the yarn of the design's stripe next to it. */
    record StripeYarn(Place place, String id) implements Repair {}

    /**
     * Give a plain band another number of picks.
     *
     * @param before how many it has
     * @param picks 1 or more
     */
    record Picks(Place place, String id, int before, int picks) implements Repair {}

    /** Make up for what was measured, and remember how many picks were planned first. */
    record MakeUp(Picks picks) implements Repair {}

    /** Plan with the width that was measured. */
    record WovenWidth(Length width) implements Repair {}

    /** Plan with what some picks of a yarn took. */
    record YarnUsed(String yarnId, Usage usage) implements Repair {}

    /** Let a block begin in whatever shed is next. */
    record NextShed(Place place, String id) implements Repair {}

    /**
     * Put a block in.
     *
     * @param index where, from 0 (lowest on the loom)
     * @param key its kind, as in {@link Block#key}
     * @param rows picks or rows
     */
    record Add(Place place, int index, String key, int rows) implements Repair {}

    /** Repeat a block of the start at the top, which follows it without that block. */
    record RepeatAtTop(String id) implements Repair {}

    /** Turn so much of a hem in first. */
    record FirstTurn(Place place, String id, Length turn) implements Repair {}

    /** Face a hem with a band of that width. */
    record BandWidth(Place place, String id, Length width) implements Repair {}

    /**
     * Take blocks away.
     *
     * @param finishes whether they say what becomes of the warp ends; else they are folds
     */
    record TakeAway(Place place, List<String> ids, boolean finishes) implements Repair {
        public TakeAway {
            Objects.requireNonNull(place);
            ids = List.copyOf(ids);
        }
    }

    /** Plan the design with that height. */
    record DesignHeight(Length height) implements Repair {}

    /** Begin so far above the lower bar. */
    record Clearance(Length clearance) implements Repair {}

    /** Keep so much free above the top. */
    record WorkingRoom(Length free) implements Repair {}

    /**
     * Keep free what is usual.
     *
     * @param below the start, mm, 0 or more
     * @param above the top, mm, 0 or more
     */
    record AsUsual(double below, double above) implements Repair {}

    /** Begin so far above the lower bar, and plan the design with that height. */
    record Fringes(Length clearance, Length height) implements Repair {}

    /** Leave it as it is. */
    record Mean(Meant.Told told) implements Repair {}

    /** Tell of it again. */
    record MeanNoMore(Meant.Told told) implements Repair {}

    /** Let an empty top follow the start. */
    record TopFollows() implements Repair {}

    /** Count widths by the warp. */
    record WidthsOfWarp() implements Repair {}
}
