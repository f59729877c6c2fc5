package thrumwright.store;

import thrumwright.block.Block;
import thrumwright.block.Tag;

/** How blocks of one kind stand in a file. */
abstract class BlockKind<B extends Block> extends Declared<B> {
    private final String key;
    private final Class<B> sort;
    private final Entry<String> kind;
    /** What all blocks have. */
    final Entry<Tag> tag;

    /** @param key by which the kind is called in files */
    BlockKind(String key, Class<B> sort) {
        this.key = key;
        this.sort = sort;
        this.kind = needed("kind", Types.only(key));
        this.tag = together(BlockParts.TAG);
    }

    final String key() {
        return key;
    }

    final Class<B> sort() {
        return sort;
    }

    @Override
    public final void write(B block, Writing out) {
        out.put(kind, key).put(tag, block.tag());
        writeOwn(block, out);
    }

    /** Writes what only blocks of this kind have. */
    abstract void writeOwn(B block, Writing out);

    /** @param block one of this kind */
    final void writeAny(Block block, Writing out) {
        write(sort.cast(block), out);
    }
}
