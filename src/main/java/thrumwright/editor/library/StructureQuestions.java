package thrumwright.editor.library;

import java.util.Optional;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;

/** What the window asks about structures. */
public interface StructureQuestions {
    /** A structure for an end. */
    record Chosen(Structure structure, Place place) {}

    /** What to do with a structure whose id another one has. */
    enum Clash {
        REPLACE,
        BOTH,
        LEAVE
    }

    /** Which structure to use, tried on that piece. */
    Optional<Chosen> choose(Piece piece, Place place);

    /** The same structure with the texts that the weaver gives it; empty: not at all. */
    Optional<Structure> describe(Structure draft);

    /** There is a structure of this one's id already. */
    Clash clash(Structure coming, Structure there);
}
