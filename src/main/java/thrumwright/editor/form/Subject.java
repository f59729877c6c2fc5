package thrumwright.editor.form;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import thrumwright.piece.Piece;

/**
 * The part of a piece that some fields are about.
 *
 * @param key tells it from other subjects
 * @param thing what to call it in the history; empty for the piece itself
 * @param in finds it in a piece
 * @param with the same piece with another such part
 */
record Subject<T>(String key, String thing, Function<Piece, Optional<T>> in, BiFunction<Piece, T, Piece> with) {
    static <T> Subject<T> always(String key, Function<Piece, T> in, BiFunction<Piece, T, Piece> with) {
        return new Subject<>(key, "", piece -> Optional.of(in.apply(piece)), with);
    }
}
