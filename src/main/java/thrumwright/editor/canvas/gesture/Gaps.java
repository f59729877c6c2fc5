package thrumwright.editor.canvas.gesture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.edit.Slot;
import thrumwright.piece.Place;

/**
 * Where blocks can be put down between those that lie there, as they lay when a gesture began: what it tries out moves
 * them about.
 *
 * @param design height where the top ends and the start begins, pixels from above
 */
public record Gaps(List<BlockLine> lines, double design) {
    /** A block and the height that the pointer meets it at, pixels from above. */
    public record BlockLine(Place place, String id, double middle) {}

    public Gaps {
        lines = List.copyOf(lines);
    }

    public static Gaps of(CanvasMap map) {
        List<BlockLine> lines = new ArrayList<>();
        for (BlockSpot spot : map.spots()) {
            lines.add(new BlockLine(spot.place(), spot.id(), spot.middle()));
        }
        return new Gaps(lines, map.designMiddle());
    }

    /** As if some blocks weren't there. */
    Gaps without(BiPredicate<Place, String> gone) {
        return new Gaps(
                lines.stream()
                        .filter(line -> !gone.test(line.place(), line.id()))
                        .toList(),
                design);
    }

    /** @param y where the pointer is, pixels from above */
    public Slot at(double y) {
        Place place = y < design ? Place.TOP : Place.START;
        int below = (int) lines.stream()
                .filter(line -> line.place() == place && line.middle() > y)
                .count();
        return new Slot(place, below);
    }
}
