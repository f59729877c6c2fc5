package thrumwright.editor.library;

import java.util.List;
import java.util.Optional;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;

/** What the window asks about structures. */
public interface StructureQuestions {
    /** A structure for an end. */
    record Chosen(Structure structure, Place place) {}

    /**
     * Edges for a sample warp.
     *
     * @param edges from below to above
     * @param base loom, warp and yarns
     */
    record Samples(List<Structure> edges, Piece base) {
        public Samples {
            edges = List.copyOf(edges);
        }
    }

    /** What to do with a structure whose id another one has. */
    enum Clash {
        REPLACE,
        BOTH,
        LEAVE
    }

    /** Which structure to use, tried on that piece. */
    Optional<Chosen> choose(Piece piece, Place place);

    /** Which edges a sample warp is to try, with that piece's loom and yarns. */
    Optional<Samples> samples(Piece piece);

    /** The same structure with the texts that the weaver gives it; empty: not at all. */
    Optional<Structure> describe(Structure draft);

    /** There is a structure of this one's id already. */
    Clash clash(Structure coming, Structure there);
}
