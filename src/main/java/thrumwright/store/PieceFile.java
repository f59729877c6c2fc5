package thrumwright.store;

import java.util.Objects;
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
        return PieceReader.read(text);
    }

    /** The whole document; the same piece makes the same text. */
    public String text() {
        return PieceWriter.write(piece, unknown);
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
            throw new FileProblem("The piece can't be kept as it is. " + e.getMessage(), e);
        }
        throw new FileProblem("The piece can't be kept as it is: it would read back differently.", null);
    }

    public PieceFile with(Piece other) {
        return new PieceFile(other, unknown);
    }
}
