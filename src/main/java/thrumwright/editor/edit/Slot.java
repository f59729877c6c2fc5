package thrumwright.editor.edit;

import java.util.List;
import java.util.Objects;
import thrumwright.block.Block;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;

/**
 * Where a block can be put in.
 *
 * @param below how many blocks of that end lie below it, from 0
 */
public record Slot(Place place, int below) {
    public Slot {
        Objects.requireNonNull(place);
    }

    /** Above the block that leads a selection; at the top of the selection's end if none does. */
    public static Slot above(Piece piece, Selection selection) {
        End end = piece.end(selection.place());
        int below = selection
                .lead()
                .map(id -> end.indexOf(id) + 1)
                .orElse(end.blocks().size());
        return new Slot(selection.place(), below);
    }

    /**
     * Where a block has to go in so that it stands here: a top that follows the start gets it from the start, as far
     * from the design as here.
     */
    public Slot own(Piece piece) {
        if (place == Place.START || !(piece.top() instanceof Top.FollowsStart follows)) {
            return this;
        }
        List<Block> top = piece.end(Place.TOP).blocks();
        // finishes stand at the edge of either end, whatever lies there
        long outside = top.subList(below, top.size()).stream()
                .filter(block -> block.finish().isEmpty())
                .count();
        List<Block> start = piece.start().blocks();
        long repeated = 0;
        for (int i = 0; i < start.size(); i++) {
            boolean counts = start.get(i).finish().isEmpty()
                    && !follows.leftOut().contains(start.get(i).id());
            if (counts && repeated++ == outside) {
                return new Slot(Place.START, i);
            }
        }
        return new Slot(Place.START, start.size());
    }
}
