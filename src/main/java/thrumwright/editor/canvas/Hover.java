package thrumwright.editor.canvas;

import java.awt.Cursor;
import java.awt.Point;
import java.util.Comparator;
import java.util.Optional;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.edit.Amounts;
import thrumwright.piece.Place;

/** What lies under the pointer: a block to take, or an edge to pull. */
final class Hover {
    /** How near an edge counts as taken, pixels. */
    private static final double NEAR = 4;

    private Hover() {}

    static Cursor cursor(PieceCanvas canvas, Point point) {
        if (edge(canvas, point.y).isPresent()) {
            return Cursor.getPredefinedCursor(Cursor.N_RESIZE_CURSOR);
        }
        return canvas.map().at(point.y).isPresent()
                ? Cursor.getPredefinedCursor(Cursor.HAND_CURSOR)
                : Cursor.getDefaultCursor();
    }

    /**
     * The selected block whose edge away from its end's fixed side can be pulled here: the upper one, since what stands
     * above moves along.
     */
    static Optional<Spot> edge(PieceCanvas canvas, double y) {
        return canvas.map().spots().stream()
                .filter(spot -> canvas.session().selection().has(spot.place(), spot.id()))
                .filter(spot -> Amounts.hasHeight(spot.plan().block()))
                .filter(spot ->
                        spot.place() == Place.START || !canvas.session().piece().topFollows())
                .filter(spot -> near(spot, y))
                .min(Comparator.comparingDouble(spot -> Math.abs(spot.top() - y)));
    }

    /** Within a thin block less, so that the block itself can be taken. */
    private static boolean near(Spot spot, double y) {
        double within = Math.min(NEAR, (spot.bottom() - spot.top()) / 3);
        return y >= spot.top() - NEAR && y <= spot.top() + within;
    }
}
