package thrumwright.editor.canvas;

import java.awt.Rectangle;
import java.util.Comparator;
import java.util.Optional;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.CanvasMap.Spot;
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
record Standing(Place place, Optional<String> id, double below) {
    /** @param later what is shown next; what stays is in both */
    static Standing of(CanvasMap map, Rectangle seen, Selection selection, Plan later) {
        Optional<Spot> lead = selection.lead().flatMap(id -> map.spot(selection.place(), id));
        Optional<Spot> stays = lead.filter(spot -> isIn(later, spot))
                .filter(spot -> spot.bottom() >= seen.getMinY() && spot.top() <= seen.getMaxY())
                .or(() -> map.spots().stream()
                        .filter(spot -> isIn(later, spot))
                        .filter(spot -> spot.bottom() >= seen.getMinY() && spot.bottom() <= seen.getMaxY())
                        .min(Comparator.comparingDouble(spot -> Math.abs(spot.bottom() - seen.getCenterY()))));
        return stays.map(spot -> new Standing(spot.place(), Optional.of(spot.id()), spot.bottom() - seen.y))
                .orElseGet(() -> {
                    Place place = map.placeAt(seen.getCenterY());
                    return new Standing(place, Optional.empty(), lowest(map, place) - seen.y);
                });
    }

    private static boolean isIn(Plan later, Spot spot) {
        return later.end(spot.place()).blocks().stream()
                .anyMatch(block -> block.block().id().equals(spot.id()));
    }

    private static double lowest(CanvasMap map, Place place) {
        PiecePicture picture = map.picture();
        return map.view().y(picture.base(place));
    }

    /** Where the window's upper edge must be on the canvas, pixels, so that it stays. */
    double top(CanvasMap map) {
        double now =
                id.flatMap(block -> map.spot(place, block)).map(Spot::bottom).orElseGet(() -> lowest(map, place));
        return now - below;
    }
}
