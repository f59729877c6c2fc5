package thrumwright.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import thrumwright.block.Block;
import thrumwright.block.OwnWords;
import thrumwright.measure.Phrase;
import thrumwright.measure.Refused;
import thrumwright.piece.End;

/** How blocks stand in a file: one declaration a kind. */
final class BlockFormats {
    /** All kinds, in the order in which they are listed. */
    private static final List<BlockKind<?>> KINDS = kindsInOrder();

    private static final ValueType<String> KEY = Types.text(new Phrase("like.one-of", Map.of("names", keys())));

    private static final Format<Block> BLOCK = new OfAnyKind();

    /** A stack of blocks. */
    static final ValueType<End> END = new Stack();

    private BlockFormats() {}

    static List<BlockKind<?>> kinds() {
        return KINDS;
    }

    private static List<BlockKind<?>> kindsInOrder() {
        List<BlockKind<?>> kinds = new ArrayList<>(RowFormats.KINDS);
        kinds.addAll(EdgeFormats.KINDS);
        return List.copyOf(kinds);
    }

    private static Phrase keys() {
        List<String> keys = new ArrayList<>();
        for (BlockKind<?> kind : KINDS) {
            keys.add(kind.key());
        }
        return Choices.oneOf(keys);
    }

    private static final class OfAnyKind implements Format<Block> {
        @Override
        public Set<String> names() {
            Set<String> names = new HashSet<>();
            for (BlockKind<?> kind : KINDS) {
                names.addAll(kind.names());
            }
            return names;
        }

        @Override
        public Block make(Fields in) throws FileProblem {
            Block made = kind(in).make(in);
            try {
                OwnWords.check(made);
            } catch (Refused e) {
                throw in.problem("words", e.why(), e);
            }
            in.without(this, "block");
            return made;
        }

        private static BlockKind<?> kind(Fields in) throws FileProblem {
            String key = in.needed("kind", KEY);
            for (BlockKind<?> kind : KINDS) {
                if (kind.key().equals(key)) {
                    return kind;
                }
            }
            throw in.mustBe("kind", KEY.like());
        }

        @Override
        public void write(Block block, Writing out) {
            kind(block).writeAny(block, out);
        }

        private static BlockKind<?> kind(Block block) {
            for (BlockKind<?> kind : KINDS) {
                if (kind.sort().isInstance(block)) {
                    return kind;
                }
            }
            throw new IllegalStateException("no format for " + block);
        }
    }

    private static final class Stack implements ValueType<End> {
        private final ValueType<List<Block>> blocks = new Listed.ById<>(BLOCK, "block", End.MOST_BLOCKS) {
            @Override
            String id(Block block) {
                return block.id();
            }
        };

        @Override
        public Phrase like() {
            return blocks.like();
        }

        @Override
        public End read(Fields in, String name, Node there) throws FileProblem {
            return new End(blocks.read(in, name, there));
        }

        @Override
        public Node node(End end, Unknown around, String name) {
            return blocks.node(end.blocks(), around, name);
        }
    }
}
