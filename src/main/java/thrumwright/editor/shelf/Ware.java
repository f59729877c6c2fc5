package thrumwright.editor.shelf;

import java.util.List;
import thrumwright.block.Block;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.plan.words.Words;

/**
 * A kind of block on the shelf.
 *
 * @param key of the kind, as in {@link Words#key}
 * @param about what it does to the cloth
 * @param block to begin from
 */
record Ware(String key, String name, String about, Block block) {
    /** All that there are, in the order of the menu. */
    static List<Ware> all(UnitSystem units, Texts texts) {
        return NewBlocks.all(units).stream()
                .map(block -> {
                    String key = block.key();
                    return new Ware(key, texts.words().kind(block), texts.say("about." + key), block);
                })
                .toList();
    }

    /** What typing a few letters on the shelf looks for. */
    @Override
    public String toString() {
        return name;
    }
}
