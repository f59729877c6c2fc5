package thrumwright.piece;

import java.util.AbstractList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;
import java.util.Set;
import java.util.function.UnaryOperator;
import thrumwright.block.Block;
import thrumwright.block.OwnWords;

/**
 * The blocks of an end in layers of a few. An end that differs from another in some blocks shares all other layers with it, so
 * that many thousand states of a piece take little room; and what was looked over once isn't looked over again.
 */
final class Stacked extends AbstractList<Block> implements RandomAccess {
    /** Of 60 blocks the layers and the list of them take the least room together. */
    private static final int LAYER = 8;

    private final Block[][] layers;
    private final int size;

    private Stacked(Block[][] layers, int size) {
        this.layers = layers;
        this.size = size;
    }

    /**
     * The same blocks, never to change.
     *
     * @throws IllegalArgumentException if there are too many, two have the same id or one has words that it can't have
     */
    static Stacked of(List<Block> blocks) {
        return blocks instanceof Stacked already ? already : new Stacked(new Block[0][], 0).changed(blocks);
    }

    /**
     * Other blocks; layers are shared that hold the very same.
     *
     * @throws IllegalArgumentException as {@link #of(List)}
     */
    Stacked changed(List<Block> others) {
        if (!sameIds(others)) {
            check(others);
        }
        int count = others.size();
        Block[][] changed = new Block[(count + LAYER - 1) / LAYER][];
        for (int i = 0; i < changed.length; i++) {
            Block[] layer = layer(others, i);
            changed[i] = has(layer, i) ? layers[i] : checked(layer);
        }
        return new Stacked(changed, count);
    }

    /** In reverse order, each as that makes it, by the same id and with the same words. */
    Stacked reflected(UnaryOperator<Block> each) {
        Block[][] reflected = new Block[layers.length][];
        for (int i = 0; i < layers.length; i++) {
            reflected[i] = new Block[Math.min(LAYER, size - i * LAYER)];
            for (int j = 0; j < reflected[i].length; j++) {
                reflected[i][j] = each.apply(get(size - 1 - i * LAYER - j));
            }
        }
        return new Stacked(reflected, size);
    }

    private boolean sameIds(List<Block> others) {
        boolean same = size == others.size() && size > 0;
        for (int i = 0; i < size && same; i++) {
            Block here = get(i);
            Block other = others.get(i);
            same = here == other || here.id().equals(other.id());
        }
        return same;
    }

    private static void check(List<Block> blocks) {
        if (blocks.size() > End.MOST_BLOCKS) {
            throw new IllegalArgumentException("an end has at most " + End.MOST_BLOCKS + " blocks");
        }
        Set<String> ids = new HashSet<>(2 * blocks.size());
        for (Block block : blocks) {
            if (!ids.add(block.id())) {
                throw new IllegalArgumentException("two blocks have the id “" + block.id() + "”");
            }
        }
    }

    private static Block[] checked(Block... layer) {
        for (Block block : layer) {
            OwnWords.check(block);
        }
        return layer;
    }

    private static Block[] layer(List<Block> blocks, int index) {
        int from = index * LAYER;
        Block[] layer = new Block[Math.min(LAYER, blocks.size() - from)];
        for (int i = 0; i < layer.length; i++) {
            layer[i] = Objects.requireNonNull(blocks.get(from + i));
        }
        return layer;
    }

    private boolean has(Block[] layer, int index) {
        boolean same = index < layers.length && layers[index].length == layer.length;
        for (int i = 0; i < layer.length && same; i++) {
            same = layers[index][i] == layer[i];
        }
        return same;
    }

    @Override
    public Block get(int index) {
        Objects.checkIndex(index, size);
        return layers[index / LAYER][index % LAYER];
    }

    @Override
    public int size() {
        return size;
    }
}
