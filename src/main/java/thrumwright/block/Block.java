package thrumwright.block;

import java.util.List;
import java.util.Optional;

/**
 * A block of an end. Blocks are immutable. What is the same question for all kinds is asked here; what only some can answer
 * has the usual answer here.
 */
public sealed interface Block permits TakesYarn, HemFold, OpenWarp, EdgeFinish {
    Tag tag();

    /** The answer that those cases have for this kind. */
    <R> R of(Cases<R> cases);

    default String id() {
        return tag().id();
    }

    /** A name for its kind in keys of text bundles, such as {@code plain-stiff}: small letters and hyphens. */
    String key();

    /** The key of all kinds that are worked alike, whatever they are for. */
    default String family() {
        return key();
    }
    /**
     * The keys of what there is to see of its working, stage by stage, in their order; at least one.
     *
     * @param rows how many rows or picks it has, 1 or more; 1 for what has none
     */
    List<String> stages(int rows);

    /** The same block reflected in a line across the warp: rows in reverse, S for Z. Twice gives the block again. */
    Block mirrored();

    Block withTag(Tag tag);

    /** A new block of this kind as it is meant at the top; the same unless it lies on the cloth beside it. */
    default Block begunAtTop() {
        return this;
    }

    /** How much of it there is; empty for a kind of which there is no more or less. */
    default Optional<Amount> extent() {
        return Optional.empty();
    }

    /**
     * The same block with another amount; one that has none stays as it is.
     *
     * @throws IllegalArgumentException if it is no amount of such a block; {@code BadMeasure} if it is too much or too little
     */
    default Block withExtent(Amount other) {
        return this;
    }

    /** Whether it stands as high as its amount says, so that more of it is higher. */
    default boolean hasHeight() {
        return false;
    }

    /** This block, if it is woven or worked with a yarn across the warp. */
    default Optional<YarnBlock> woven() {
        return Optional.empty();
    }

    /** This block, if it takes yarn besides the warp. */
    default Optional<TakesYarn> takesYarn() {
        return Optional.empty();
    }

    /** The id of the yarn that it is worked with, if that is one of its own. */
    default Optional<String> ownYarn() {
        return Optional.empty();
    }

    /** This block, if it stands at the edge and says what becomes of the warp ends. */
    default Optional<EdgeFinish> finish() {
        return Optional.empty();
    }

    /** Whether it is taken out again in the end. */
    default boolean comesOut() {
        return false;
    }

    /** Whether it is for the start only: it orders the warp before anything is woven, so that the top does without it. */
    default boolean startOnly() {
        return false;
    }

    /** Whether it keeps the picks beside it in place once nothing else holds them. */
    default boolean holds() {
        return false;
    }

    /** Places that an own wording of its step has beside those of all blocks, see {@link OwnWords}. */
    default List<String> ownPlaces() {
        return List.of();
    }
}
