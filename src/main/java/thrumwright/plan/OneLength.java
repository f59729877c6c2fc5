package thrumwright.plan;

import java.util.List;
import java.util.Optional;
import thrumwright.block.YarnBlock;

/**
 * The length of yarn that a block is woven from: its own, or one that goes on from block to block without a cut.
 *
 * @param cutFrom the block before, of the same yarn, which doesn't go on since it would hold nothing at the edge
 * @param before whose yarn goes on into this block; empty where it is begun
 * @param after the blocks that go on with it, in the order of weaving
 * @param cut for all of them together, from the block where the yarn is begun to the last
 */
public record OneLength(Optional<YarnBlock> cutFrom, Optional<YarnBlock> before, List<YarnBlock> after, Cut cut) {
    public OneLength {
        after = List.copyOf(after);
    }

    static OneLength alone(Cut cut) {
        return new OneLength(Optional.empty(), Optional.empty(), List.of(), cut);
    }
}
