package thrumwright.sheet.card;

import java.util.List;
import thrumwright.piece.Piece;
import thrumwright.yarn.Yarn;

/** A letter for each yarn of a piece, so that yarns are told apart where there is no colour: A, B … Z, AA, AB … */
public record YarnLetters(List<String> ids) {
    private static final int LETTERS = 26;

    public YarnLetters {
        ids = List.copyOf(ids);
    }

    /** In the order in which the piece has its yarns. */
    public static YarnLetters of(Piece piece) {
        return new YarnLetters(piece.yarns().stream().map(Yarn::id).toList());
    }

    /** The letter of one of those yarns. */
    public String letter(Yarn yarn) {
        int index = ids.indexOf(yarn.id());
        String last = String.valueOf((char) ('A' + index % LETTERS));
        return index < LETTERS ? last : (char) ('A' + index / LETTERS - 1) + last;
    }
}
