package thrumwright.editor.canvas.label;

import java.util.Optional;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.piece.Place;

/**
 * A label in its place.
 *
 * @param spot of its block; empty for the design's label
 * @param y its middle, pixels of the canvas
 * @param target the middle of what it is about, pixels of the canvas
 */
public record LabelRow(Optional<BlockSpot> spot, BlockWording wording, LabelWidths widths, double y, double target) {
    LabelRow at(double other) {
        return new LabelRow(spot, wording, widths, other, target);
    }

    boolean isOf(Place place, String id) {
        return spot.filter(there -> there.isOf(place, id)).isPresent();
    }
}
