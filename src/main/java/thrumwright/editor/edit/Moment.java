package thrumwright.editor.edit;

import java.util.Objects;
import thrumwright.piece.Piece;

/** A piece and what is selected in it. */
public record Moment(Piece piece, Selection selection) {
    public Moment {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(selection);
    }
}
