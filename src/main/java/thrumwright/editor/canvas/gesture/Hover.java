package thrumwright.editor.canvas.gesture;

import java.awt.Cursor;
import java.util.Comparator;
import java.util.Optional;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Session;
import thrumwright.piece.Place;

/** What lies under the pointer: a block to take, or an edge to pull. */
final class Hover {
    /** How near an edge counts as taken, pixels. */
    private static final double NEAR = 4;

    private Hover() {}

    static Cursor cursor(CanvasMap map, Session session, double y) {
        if (edge(map, session, y).isPresent()) {
            return Cursor.getPredefinedCursor(Cursor.N_RESIZE_CURSOR);
        }
        return map.at(y).isPresent() ? Cursor.getPredefinedCursor(Cursor.HAND_CURSOR) : Cursor.getDefaultCursor();
    }

    /**
     * The selected block whose edge away from its end's fixed side can be pulled here: the upper one, since what stands
     * above moves along.
     */
    static Optional<BlockSpot> edge(CanvasMap map, Session session, double y) {
        return map.spots().stream()
                .filter(spot -> session.selection().has(spot.place(), spot.id()))
                .filter(spot -> Amounts.hasHeight(spot.plan().block()))
                .filter(spot -> spot.place() == Place.START || !session.piece().topFollows())
                .filter(spot -> near(spot, y))
                .min(Comparator.comparingDouble(spot -> Math.abs(spot.top() - y)));
    }

    /** Within a thin block less, so that the block itself can be taken. */
    private static boolean near(BlockSpot spot, double y) {
        double within = Math.min(NEAR, (spot.bottom() - spot.top()) / 3);
        return y >= spot.top() - NEAR && y <= spot.top() + within;
    }
}
