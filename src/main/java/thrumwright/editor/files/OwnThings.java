package thrumwright.editor.files;

import java.util.Optional;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.Piece;
import thrumwright.yarn.Yarn;

/**
 * The weaver's own loom, warp and weft for a new piece; what is empty is as usual.
 *
 * @param kind key of the kind of loom, where it is none of the weaver's own
 */
public record OwnThings(Optional<Loom> loom, Optional<String> kind, Optional<Yarn> warp, Optional<Yarn> weft) {
    public static final OwnThings NONE =
            new OwnThings(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** A piece that was just begun, with them. */
    public Piece on(Piece begun) {
        Piece piece = warp.map(yarn -> with(begun, begun.warp().yarnId(), yarn)).orElse(begun);
        Piece woven = weft.map(yarn -> with(piece, piece.design().firstYarnId(), yarn))
                .orElse(piece);
        return loom.map(own -> woven.withLoom(fitted(own, woven.loom()))).orElseGet(() -> ofKind(woven));
    }

    private Piece ofKind(Piece piece) {
        return kind.map(key -> piece.withLoom(piece.loom().withKind(LoomKinds.of(key, piece))))
                .orElse(piece);
    }

    private static Piece with(Piece piece, String id, Yarn yarn) {
        return piece.withYarns(piece.yarns().stream()
                .map(known -> known.id().equals(id) ? yarn.withId(id) : known)
                .toList());
    }

    /** Without posts where the structure wants none. */
    private static Loom fitted(Loom own, Loom usual) {
        return usual.uprights().isEmpty() ? own.withUprights(Optional.empty()) : own;
    }
}
