package thrumwright.editor.canvas.seen;

import java.awt.Rectangle;
import java.util.Comparator;
import java.util.Optional;
import thrumwright.editor.edit.Selection;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;

/**
 * What stays where it is in the window while blocks grow or shrink: the lower edge of the block that is worked on; if that
 * can't be seen, of the one that is nearest to the middle of the window; where there is none, the lowest line of its end.
 *
 * @param id empty for the end's lowest line
 * @param below how far below the upper edge of the window, pixels
 */
public record Standing(Place place, Optional<String> id, double below) {
    /** @param later what is shown next; what stays is in both */
    public static Standing of(CanvasMap map, Rectangle seen, Selection selection, Plan later) {
        Optional<BlockSpot> lead = selection.lead().flatMap(id -> map.spot(selection.place(), id));
        Optional<BlockSpot> stays = lead.filter(spot -> isIn(later, spot))
                .filter(spot -> spot.bottom() >= seen.getMinY() && spot.top() <= seen.getMaxY())
                .or(() -> map.spots().stream()
                        .filter(spot -> isIn(later, spot))
                        .filter(spot -> spot.bottom() >= seen.getMinY() && spot.bottom() <= seen.getMaxY())
                        .min(Comparator.comparingDouble(spot -> Math.abs(spot.bottom() - seen.getCenterY()))));
        return stays.map(spot -> new Standing(spot.place(), Optional.of(spot.id()), spot.bottom() - seen.y))
                .orElseGet(() -> {
                    Place place = map.placeAt(seen.getCenterY());
                    return new Standing(place, Optional.empty(), map.y(place, 0) - seen.y);
                });
    }

    private static boolean isIn(Plan later, BlockSpot spot) {
        return later.end(spot.place()).blocks().stream()
                .anyMatch(block -> block.block().id().equals(spot.id()));
    }

    /** Where the window's upper edge must be on the canvas, pixels, any sign, so that it stays. */
    public double top(CanvasMap map) {
        double now = id.flatMap(block -> map.spot(place, block))
                .map(BlockSpot::bottom)
                .orElseGet(() -> map.y(place, 0));
        return now - below;
    }
}
