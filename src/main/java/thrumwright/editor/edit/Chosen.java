package thrumwright.editor.edit;

import java.util.Objects;
import thrumwright.piece.Place;

/** A block that is chosen. */
public record Chosen(Place place, String blockId) {
    public Chosen {
        Objects.requireNonNull(place);
        Objects.requireNonNull(blockId);
    }
}
