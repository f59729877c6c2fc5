package thrumwright.testing;

import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Block;
import thrumwright.block.Tag;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.End;
import thrumwright.piece.Warp;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;

/** Pieces to measure speed with. */
public final class LargePieces {
    private LargePieces() {}

    /** The first demo piece. */
    public static PieceFile demo() throws FileProblem {
        return PieceFile.read(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)));
    }

    /** A piece of 1,500 warp ends with 60 blocks at either end. */
    public static PieceFile wide() throws FileProblem {
        List<Block> blocks = new ArrayList<>();
        List<Block> once = Pieces.hemmed().blocks();
        for (int i = 0; i < 60; i++) {
            blocks.add(once.get(i % (once.size() - 1)).withTag(Tag.of("b" + i)));
        }
        return demo().with(Pieces.panel()
                .withWarp(new Warp(Length.parse("500 cm"), Sett.parse("3/cm"), "cord"))
                .withStart(new End(blocks)));
    }
}
