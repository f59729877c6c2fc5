package thrumwright.piece;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import thrumwright.block.Block;
import thrumwright.block.YarnBlock;

/**
 * A stack of blocks, from the lowest on the loom to the highest: the order in which they are woven.
 *
 * @param blocks with different ids, at most {@link #MOST_BLOCKS}
 */
public record End(List<Block> blocks) {
    /** The most blocks of an end. */
    public static final int MOST_BLOCKS = 500;

    public End {
        blocks = Stacked.of(blocks);
    }

    public static End empty() {
        return new End(List.of());
    }

    public Optional<Block> block(String id) {
        return blocks.stream().filter(block -> block.id().equals(id)).findFirst();
    }

    /** Where a block stands, from 0 at the bottom; −1 if it isn't there. */
    public int indexOf(String id) {
        for (int i = 0; i < blocks.size(); i++) {
            if (blocks.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Reflected in a line across the warp: blocks and rows in reverse order, S for Z. Twice gives the end again. Sheds
     * and sides that a block demands go along, so that nothing is lost; see {@link #unforced()}.
     */
    public End mirrored() {
        return new End(stack().reflected(Block::mirrored));
    }

    /** {@link #mirrored()} and {@link #unforced()}. */
    End reflected() {
        return new End(stack().reflected(block -> free(block.mirrored())));
    }

    private static Block free(Block block) {
        Optional<YarnBlock> woven = block.woven();
        return woven.isPresent() ? woven.get().unforced() : block;
    }

    private Stacked stack() {
        return Stacked.of(blocks);
    }

    /** Every block free to go on from the row before it. */
    public End unforced() {
        return map(End::free);
    }

    public End without(Collection<String> ids) {
        return ids.isEmpty()
                ? this
                : changed(blocks.stream()
                        .filter(block -> !ids.contains(block.id()))
                        .toList());
    }

    /** @param index from 0 (lowest) to the number of blocks */
    public End with(int index, Block block) {
        List<Block> more = new ArrayList<>(blocks);
        more.add(index, block);
        return changed(more);
    }

    /** The same end with another block in the place of the one that has its id. */
    public End replaced(Block other) {
        return map(block -> block.id().equals(other.id()) ? other : block);
    }

    /**
     * The same end with its finishes at the edge of the cloth, just outside the outermost block that stays; next to the
     * design where none does.
     */
    End withFinishesAtTheEdge(Place place) {
        List<Block> finishes = new ArrayList<>();
        for (Block block : blocks) {
            if (block.finish().isPresent()) {
                finishes.add(block);
            }
        }
        if (finishes.isEmpty()) {
            return this;
        }
        List<Block> ordered = new ArrayList<>(
                blocks.stream().filter(block -> !finishes.contains(block)).toList());
        ordered.addAll(edge(ordered, place), finishes);
        return ordered.equals(blocks) ? this : new End(ordered);
    }

    private static int edge(List<Block> blocks, Place place) {
        List<Integer> staying = IntStream.range(0, blocks.size())
                .filter(i -> blocks.get(i).woven().isPresent() && !blocks.get(i).comesOut())
                .boxed()
                .toList();
        if (place == Place.START) {
            return staying.isEmpty() ? blocks.size() : staying.get(0);
        }
        return staying.isEmpty() ? 0 : staying.get(staying.size() - 1) + 1;
    }

    public End map(UnaryOperator<Block> change) {
        return changed(blocks.stream().map(change).toList());
    }

    /** With other blocks; what stays takes no room again. */
    private End changed(List<Block> others) {
        return new End(stack().changed(others));
    }

    /** An id that no block here has, made from a stem: {@code soumak}, {@code soumak-2} … */
    public String freeId(String stem) {
        String id = stem;
        for (int i = 2; indexOf(id) >= 0; i++) {
            id = stem + "-" + i;
        }
        return id;
    }
}
