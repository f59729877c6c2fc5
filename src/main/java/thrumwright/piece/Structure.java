package thrumwright.piece;

import java.util.Objects;
import thrumwright.block.Block;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.YarnBlock;

/**
 * A way to begin a piece: a stack of blocks for any piece's start.
 *
 * @param id unique among the structures
 * @param use when to use it
 * @param needs what it asks for: free warp, posts, a bar
 * @param source where it comes from, or “common practice, no source”
 */
public record Structure(String id, String name, String use, String needs, String source, End end) {
    public Structure {
        Objects.requireNonNull(name);
        Objects.requireNonNull(use);
        Objects.requireNonNull(needs);
        Objects.requireNonNull(source);
        Objects.requireNonNull(end);
        if (!id.matches("[a-z0-9-]{1,60}")) {
            throw new IllegalArgumentException("A structure's id is made of small letters, digits and hyphens.");
        }
    }

    /** Its stack for a piece; a yarn that the piece doesn't have gives way to the weft. */
    public End fittedTo(Piece piece) {
        return end.map(block -> fitted(block, piece));
    }

    private static Block fitted(Block block, Piece piece) {
        boolean foreign = block instanceof YarnBlock yarn
                && yarn.use().material() instanceof Material.Own own
                && piece.yarns().stream().noneMatch(known -> known.id().equals(own.yarnId()));
        if (!foreign) {
            return block;
        }
        YarnBlock yarn = (YarnBlock) block;
        return yarn.withUse(yarn.use().with(new Material.Part(MaterialRole.WEFT)));
    }
}
