package thrumwright.editor.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.edit.Slot;
import thrumwright.piece.Place;

/**
 * Where blocks can be put down between those that lie there, as they lay when a gesture began: what it tries out moves
 * them about.
 *
 * @param design height where the top ends and the start begins, pixels
 */
public record Slots(List<Line> lines, double design) {
    /** A block and the height that it is found at, pixels from above. */
    record Line(Place place, String id, double middle) {}

    public Slots {
        lines = List.copyOf(lines);
    }

    static Slots of(CanvasMap map) {
        List<Line> lines = new ArrayList<>();
        for (Spot spot : map.spots()) {
            lines.add(new Line(spot.place(), spot.id(), spot.middle()));
        }
        return new Slots(lines, map.designMiddle());
    }

    /** As if some blocks weren't there. */
    Slots without(BiPredicate<Place, String> gone) {
        return new Slots(
                lines.stream()
                        .filter(line -> !gone.test(line.place(), line.id()))
                        .toList(),
                design);
    }

    /** The one at a height. */
    Slot at(double y) {
        Place place = y < design ? Place.TOP : Place.START;
        int below = (int) lines.stream()
                .filter(line -> line.place() == place && line.middle() > y)
                .count();
        return new Slot(place, below);
    }
}
