package thrumwright.editor.files;

import java.util.Optional;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Structure;

/**
 * How a new piece begins.
 *
 * @param structure of its start; empty: no blocks yet
 * @param own what the weaver has of it already
 */
public record Beginning(Optional<Structure> structure, UnitSystem units, OwnThings own) {
    /** On a loom and with yarns as they are usual. */
    public Beginning(Optional<Structure> structure, UnitSystem units) {
        this(structure, units, OwnThings.NONE);
    }
}
