package thrumwright.benchmark;

import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Block;
import thrumwright.block.PlainBand;
import thrumwright.block.Tag;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;

/** The worked panel with its blocks over and over again, on 400 warp ends. */
final class LongPieces {
    private LongPieces() {}

    static Piece of(int blocks) {
        List<Block> all = new ArrayList<>();
        List<Block> once = Pieces.hemmed().blocks();
        for (int i = 0; i < blocks; i++) {
            all.add(once.get(i % (once.size() - 1)).withTag(Tag.of("b" + i)));
        }
        return Pieces.panel()
                .withWarp(new Warp(Length.parse("400 mm"), Sett.parse("1/mm"), "cord"))
                .withStart(new End(all));
    }

    static PieceFile file(int blocks) {
        return new PieceFile(of(blocks), Unknown.none());
    }

    /** One of its bands, another one for each number. */
    static YarnBlock band(Piece piece, int number) {
        List<Block> blocks = piece.start().blocks();
        int at = number * 7 % blocks.size();
        while (!(blocks.get(at) instanceof PlainBand)) {
            at = (at + 1) % blocks.size();
        }
        return (PlainBand) blocks.get(at);
    }
}
