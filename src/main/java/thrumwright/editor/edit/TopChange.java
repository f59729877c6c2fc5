package thrumwright.editor.edit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import thrumwright.block.Block;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;

/**
 * What becomes of a piece whose top, so far a stack of its own, follows the start again.
 *
 * @param after the piece then
 * @param lost blocks of the top's own stack that aren't the start's turned over, in the order in which they stand
 * @param orderLost whether the blocks that stay stood in another order
 */
record TopChange(Piece after, List<Block> lost, boolean orderLost) {
    TopChange {
        lost = List.copyOf(lost);
    }

    /** Blocks that the top lacks now stay left out; of an empty top only the ordering cords do. */
    static TopChange following(Piece piece) {
        if (piece.topFollows()) {
            return new TopChange(piece, List.of(), false);
        }
        List<Block> own = piece.end(Place.TOP).blocks();
        Piece after = piece.withTop(
                own.isEmpty()
                        ? Top.FollowsStart.withoutOrderingCords(piece.start())
                        : new Top.FollowsStart(lacking(piece)));
        List<Block> then = after.end(Place.TOP).blocks();
        List<Block> lost = own.stream().filter(block -> !then.contains(block)).toList();
        List<Block> kept = own.stream().filter(then::contains).toList();
        return new TopChange(
                after, lost, !kept.equals(then.stream().filter(own::contains).toList()));
    }

    private static Set<String> lacking(Piece piece) {
        Set<String> lacking = new HashSet<>();
        for (Block block : piece.start().blocks()) {
            if (piece.block(Place.TOP, block.id()).isEmpty()) {
                lacking.add(block.id());
            }
        }
        return lacking;
    }
}
