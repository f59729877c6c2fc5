package thrumwright.store;

import java.util.Map;
import java.util.Objects;
import thrumwright.measure.Phrase;
import thrumwright.piece.Piece;

/**
 * A piece as it was read from a file, with what this version didn't know of it.
 *
 * @param unknown to be given back when the piece is written again
 */
public record PieceFile(Piece piece, Unknown unknown) {
    /** The version of the piece file that this program reads and writes. */
    public static final int VERSION = 1;

    public PieceFile {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(unknown);
    }

    /** @throws FileProblem with a plain sentence that says where and what would be right */
    public static PieceFile read(String text) throws FileProblem {
        Fields fields = Fields.of(text);
        Piece piece = PieceFormats.PIECE.whole(fields);
        return new PieceFile(piece, fields.unknown());
    }

    /** The whole document; the same piece makes the same text. */
    public String text() {
        return Json.write(PieceFormats.PIECE.object(piece, unknown));
    }

    /**
     * As {@link #text()}, but never a text that couldn't be read again, such as one with a far too long note.
     *
     * @throws FileProblem saying where and what
     */
    public String checkedText() throws FileProblem {
        String text = text();
        try {
            if (read(text).piece().equals(piece)) {
                return text;
            }
        } catch (FileProblem e) {
            throw new FileProblem("file.piece-not-kept", Map.of("why", e.why()), e);
        }
        throw new FileProblem(new Phrase("file.piece-differs"), null);
    }

    public PieceFile with(Piece other) {
        return new PieceFile(other, unknown);
    }
}
