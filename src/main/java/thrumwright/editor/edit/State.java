package thrumwright.editor.edit;

import java.util.Objects;
import java.util.Optional;
import thrumwright.piece.Piece;

/** A piece and what is chosen in it. */
public record State(Piece piece, Optional<Chosen> chosen) {
    public State {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(chosen);
    }

    /** The same piece with nothing chosen that isn't there. */
    State checked() {
        boolean there = chosen.isEmpty()
                || piece.block(chosen.get().place(), chosen.get().blockId()).isPresent();
        return there ? this : new State(piece, Optional.empty());
    }
}
