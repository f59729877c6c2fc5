package thrumwright.editor.edit;

import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import thrumwright.piece.Piece;

/**
 * A named change of a piece.
 *
 * @param name what the weaver did, as the history shows it
 * @param change may refuse by throwing {@link IllegalArgumentException} with a sentence for the user
 * @param selects what is selected afterwards; empty: what was selected before, as far as it is still there
 */
public record Edit(String name, UnaryOperator<Piece> change, Optional<Selection> selects) {
    public Edit {
        Objects.requireNonNull(name);
        Objects.requireNonNull(change);
        Objects.requireNonNull(selects);
    }

    public static Edit of(String name, UnaryOperator<Piece> change) {
        return new Edit(name, change, Optional.empty());
    }

    public Edit selecting(Selection selection) {
        return new Edit(name, change, Optional.of(selection));
    }
}
