package thrumwright.block;

/** A block of an end. Blocks are immutable. */
public sealed interface Block permits TakesYarn, HemFold, OpenWarp, EdgeFinish {
    Tag tag();

    /** The answer that those cases have for this kind. */
    <R> R of(Cases<R> cases);

    default String id() {
        return tag().id();
    }

    /** The same block reflected in a line across the warp: rows in reverse, S for Z. Twice gives the block again. */
    Block mirrored();

    Block withTag(Tag tag);
}
