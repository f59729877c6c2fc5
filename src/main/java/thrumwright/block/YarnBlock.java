package thrumwright.block;

import java.util.List;

/** A block that is woven or worked with a yarn. Rows are counted from the bottom, in the order of working. */
public sealed interface YarnBlock extends TakesYarn
        permits OrderingCord, PlainBand, SpreadHeader, Twining, Soumak, HalfHitch {
    @Override
    YarnBlock withUse(Use use);

    /** The answer that those cases have for this kind. */
    <R> R of(YarnCases<R> cases);

    @Override
    default <R> R of(Cases<R> cases) {
        return of((YarnCases<R>) cases);
    }

    /**
     * The yarn on its warp as this block works it. Everything else here is asked with that.
     *
     * @param yarn as it lies beaten, one by one
     */
    default Setting worked(Setting yarn) {
        return yarn;
    }

    /** How many yarns run side by side along the path. */
    default int together() {
        return 1;
    }

    /** Number of passes across the warp. */
    int rowCount(Setting setting);

    /** Height of the whole block on the loom, mm. */
    double height(Setting setting);

    /** Exact yarn length in closed form, before ease and tails, mm. Independent of the number of ends in cost. */
    double length(Setting setting);

    /** Its rows, going on from a course. */
    List<Row> rows(Setting setting, Course before);

    /** The yarn's path through those rows: the visit order from which length and picture come. */
    List<Strand> strands(Setting setting, List<Row> rows);

    /** Whether the yarn is folded round the first end, so that both its ends hang where it finishes. */
    default boolean folded() {
        return false;
    }

    /** Whether the yarn is tied at both ends instead of having tails. */
    default boolean tied() {
        return false;
    }

    @Override
    YarnBlock mirrored();

    @Override
    YarnBlock withTag(Tag tag);

    /** This block free to begin wherever the row before ends, in whatever shed is next. */
    YarnBlock unforced();
}
