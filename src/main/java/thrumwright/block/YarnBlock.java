package thrumwright.block;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A block that is woven or worked with a yarn. Rows are counted from the bottom, in the order of working. */
public sealed interface YarnBlock extends TakesYarn permits PlainWeave, Twining, Soumak, HalfHitch, Hemstitching {
    @Override
    YarnBlock withUse(Use use);

    @Override
    default YarnBlock withMaterial(Material other) {
        return withUse(use().with(other));
    }

    /** The answer that those cases have for this kind. */
    <R> R of(YarnCases<R> cases);

    @Override
    default <R> R of(Cases<R> cases) {
        return of((YarnCases<R>) cases);
    }

    @Override
    default Optional<YarnBlock> woven() {
        return Optional.of(this);
    }

    @Override
    default boolean hasHeight() {
        return true;
    }

    /** In rows, or in picks where it is plain weave. */
    @Override
    Optional<Amount> extent();

    @Override
    default YarnBlock withExtent(Amount other) {
        return withRows(other.rows());
    }

    /**
     * The same block with so many rows or picks.
     *
     * @param other 1 to {@link Amount#MOST_ROWS}
     */
    YarnBlock withRows(int other);

    /** Whether its rows are picks of plain weave, each in a shed. */
    default boolean plainWeave() {
        return false;
    }

    /** The shed that it demands for its first pick; empty: the next in turn, or it has none. */
    default Optional<Shed> firstShed() {
        return Optional.empty();
    }

    /** With another demand for its first pick; a block without sheds stays as it is. */
    default YarnBlock withFirstShed(Optional<Shed> other) {
        return this;
    }

    /**
     * With stitches that lean another way; a block whose stitches don't lean stays as it is.
     *
     * @param first of the first row
     * @param countered whether the lean changes from row to row
     */
    default YarnBlock withLean(Lean first, boolean countered) {
        return this;
    }

    /** Whether it goes from front to back in every space between warp ends or groups, where there must be room for it. */
    default boolean fillsSpaces() {
        return plainWeave();
    }

    /** Whether it can be seen beside the design when the hem is folded. */
    default boolean showsBesideDesign() {
        return false;
    }

    /** After so many warp ends everything is as before, counted from either side; 1 or more. */
    default int period() {
        return 2;
    }

    /** How many ends the yarn passes at most before it changes sides; 1 or more. */
    default int longestFloat() {
        return 1;
    }

    /** So many warp ends show how it goes, a few repetitions of it; a drawing may show more. */
    default int endsToShow() {
        return 2 * period();
    }

    /**
     * The yarn on its warp as this block works it. Everything else here is asked with that.
     *
     * @param yarn as it lies beaten, one by one
     */
    default Setting worked(Setting yarn) {
        return yarn;
    }

    /**
     * How far it lies over the cloth beside it, mm: up from its upper edge, or down from its lower one if below 0; 0 for all that
     * stands by itself.
     */
    default double lap(Setting setting) {
        return 0;
    }

    /** Whether its yarn lies on its own yarn, so that it matters what was led first. */
    default boolean crossesItself() {
        return false;
    }

    /** Numbers of its own that texts name, by their places; among them {@code group} for warp ends taken together. */
    default Map<String, Integer> counts() {
        return Map.of();
    }

    /** The keys of the cautions that its step needs beside those of every step. */
    default List<String> cautions() {
        return List.of();
    }

    /** The keys of the sentences that tell how it is worked, in their order. */
    List<String> told(Setting setting);

    /** How many yarns run side by side along the path. */
    default int together() {
        return 1;
    }

    /** Into how many lengths its yarn is cut, each with tails of its own, 1 or more. */
    default int lengths(Setting setting) {
        return together();
    }

    /** What the longest of them takes before ease and tails, mm, more than 0. */
    default double lengthOfEach(Setting setting) {
        return length(setting);
    }

    /** Whether its lengths lie side by side, each across a part of the warp. */
    default boolean inParts() {
        return false;
    }

    /** The same as a picture of so few ends shows it, 2 or more: one that is divided is divided there too. */
    default YarnBlock onFew(int ends) {
        return this;
    }

    /** Number of passes across the warp, 1 or more. */
    default int rowCount(Setting setting) {
        return extent().orElseThrow().picks(setting.beaten());
    }

    /** Height of the whole block on the loom, mm, 0 or more. */
    double height(Setting setting);

    /** Exact yarn length in closed form, before ease and tails, mm, more than 0. Independent of the number of ends in cost. */
    double length(Setting setting);

    /** Its rows, going on from a course. */
    List<Row> rows(Setting setting, Course before);

    /** The yarn's path through those rows: the visit order from which length and picture come. */
    List<Strand> strands(Setting setting, List<Row> rows);

    /** Whether the yarn is folded round the outermost end, so that both its ends hang where it finishes. */
    default boolean folded() {
        return false;
    }

    /**
     * Whether a new length can be laid in where one runs out: beside it in a shed that is beaten shut. What is tied is pulled
     * firm, and an overlap slips; what is worked without a shed has none to lie in (common practice, no source).
     */
    default boolean joins() {
        return plainWeave() && !tied();
    }

    /** The key of the sentence that tells how to handle it where it is long and can't be joined. */
    default String whole() {
        return "cord.whole";
    }

    /** Whether the yarn is tied at both ends instead of having tails. */
    default boolean tied() {
        return false;
    }

    /** Whether its yarn is one with a tail at either end, so that a neighbour's can go on in it, and it in a neighbour. */
    default boolean goesOn() {
        return !folded() && !tied() && together() == 1 && !use().byItself();
    }

    @Override
    YarnBlock mirrored();

    @Override
    YarnBlock withTag(Tag tag);

    /** This block free to begin wherever the row before ends, in whatever shed is next. */
    default YarnBlock unforced() {
        boolean free = use().from().isEmpty() && firstShed().isEmpty();
        return free ? this : withUse(use().unforced()).withFirstShed(Optional.empty());
    }

    /**
     * An answer for each kind of block that is worked with a yarn across the warp. A new kind doesn't compile until all have
     * answered.
     *
     * @param <R> what the answer is
     */
    interface YarnCases<R> {
        R orderingCord(OrderingCord orderingCord);

        R plainBand(PlainBand plainBand);

        R slitBand(SlitBand slitBand);

        R spreadHeader(SpreadHeader spreadHeader);

        R twining(Twining twining);

        R soumak(Soumak soumak);

        R halfHitch(HalfHitch halfHitch);

        R hemstitching(Hemstitching hemstitching);
    }

    /**
     * One answer for most of those kinds, see {@link UsualCases}.
     *
     * @param <R> what the answer is
     */
    interface UsualYarnCases<R> extends YarnCases<R> {
        /** The answer for a kind that isn't overridden. */
        R usual(Block block);

        @Override
        default R orderingCord(OrderingCord orderingCord) {
            return usual(orderingCord);
        }

        @Override
        default R plainBand(PlainBand plainBand) {
            return usual(plainBand);
        }

        @Override
        default R slitBand(SlitBand slitBand) {
            return usual(slitBand);
        }

        @Override
        default R spreadHeader(SpreadHeader spreadHeader) {
            return usual(spreadHeader);
        }

        @Override
        default R twining(Twining twining) {
            return usual(twining);
        }

        @Override
        default R soumak(Soumak soumak) {
            return usual(soumak);
        }

        @Override
        default R halfHitch(HalfHitch halfHitch) {
            return usual(halfHitch);
        }

        @Override
        default R hemstitching(Hemstitching hemstitching) {
            return usual(hemstitching);
        }
    }
}
