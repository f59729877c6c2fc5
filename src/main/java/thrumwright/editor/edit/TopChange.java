package thrumwright.editor.edit;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import thrumwright.block.Block;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;

/**
 * What becomes of a piece whose top, so far a stack of its own, follows the start again.
 *
 * @param after the piece then
 * @param lost blocks of the top's own stack that aren't the start's turned over, in the order in which they stand
 * @param regained blocks of the start that the top's own stack lacked and now has
 * @param orderLost whether the blocks that stay stood in another order
 */
record TopChange(Piece after, List<Block> lost, List<Block> regained, boolean orderLost) {
    TopChange {
        lost = List.copyOf(lost);
        regained = List.copyOf(regained);
    }

    /** The whole start, turned over, but for what only a start needs and the top doesn't have. */
    static TopChange following(Piece piece) {
        if (piece.topFollows()) {
            return new TopChange(piece, List.of(), List.of(), false);
        }
        List<Block> own = piece.end(Place.TOP).blocks();
        Piece after = piece.withTop(new Top.FollowsStart(leftOut(piece)));
        List<Block> then = after.end(Place.TOP).blocks();
        List<Block> lost = own.stream().filter(block -> !then.contains(block)).toList();
        List<Block> kept = own.stream().filter(then::contains).toList();
        List<Block> regained = then.stream()
                .filter(block -> piece.block(Place.TOP, block.id()).isEmpty())
                .toList();
        return new TopChange(
                after,
                lost,
                regained,
                !kept.equals(then.stream().filter(own::contains).toList()));
    }

    private static Set<String> leftOut(Piece piece) {
        return piece.start().blocks().stream()
                .filter(Block::startOnly)
                .map(Block::id)
                .filter(id -> piece.block(Place.TOP, id).isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }
}
