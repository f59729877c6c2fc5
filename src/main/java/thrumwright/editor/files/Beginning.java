package thrumwright.editor.files;

import java.util.Optional;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Structure;

/**
 * How a new piece begins.
 *
 * @param structure of its start; empty: no blocks yet
 */
public record Beginning(Optional<Structure> structure, UnitSystem units) {}
