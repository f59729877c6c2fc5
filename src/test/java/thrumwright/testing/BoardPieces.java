package thrumwright.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thrumwright.block.Block;
import thrumwright.block.Tag;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;

/** Very different pieces to look at: narrow and wide, coarse and fine, with a fringe, on a closed warp, of forty blocks. */
public final class BoardPieces {
    private static final Path FOLDER = Path.of("src/test/resources/thrumwright/structures/pieces");

    private BoardPieces() {}

    /** By their names: 4 cm and 2 m wide, with 2 and 14 ends to the centimetre and all between. */
    public static Map<String, Piece> all() {
        Map<String, Piece> pieces = new LinkedHashMap<>();
        pieces.put("narrow", with("a-ribbon", "folded-hem"));
        pieces.put("wide", with("f-wall", "folded-hem"));
        pieces.put("coarse", with("e-rug", "faced-hem"));
        pieces.put("fine", with("d-fine", "folded-hem"));
        pieces.put("fringe", with("c-panel", "wrapped-tassels"));
        pieces.put("closed", with("c-panel", "closed-warp"));
        pieces.put("forty", forty());
        return pieces;
    }

    private static Piece with(String piece, String structure) {
        return Structures.builtIn().byId(structure).orElseThrow().on(read(piece), Place.START);
    }

    private static Piece read(String name) {
        try {
            return PieceFile.read(Files.readString(FOLDER.resolve(name + ".json")))
                    .piece();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FileProblem e) {
            throw new AssertionError(e);
        }
    }

    private static Piece forty() {
        List<Block> blocks = new ArrayList<>();
        List<Block> once = Pieces.hemmed().blocks();
        for (int i = 0; i < 40; i++) {
            blocks.add(once.get(i % (once.size() - 1)).withTag(Tag.of("b" + i)));
        }
        return Pieces.panel().withStart(new End(blocks));
    }
}
