package thrumwright.drawing.step;

import thrumwright.block.Amount;
import thrumwright.block.HalfHitch;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Twining;
import thrumwright.block.YarnBlock;

/** Makes a block shorter for a drawing of its first or last rows. */
final class Rows {
    private Rows() {}

    static YarnBlock limited(YarnBlock block, int rows) {
        if (block instanceof OrderingCord cord) {
            return cord.withPicks(rows);
        } else if (block instanceof SpreadHeader header) {
            return header.withPicks(rows);
        } else if (block instanceof PlainBand band) {
            return band.withAmount(new Amount.Picks(rows));
        } else if (block instanceof Twining twining) {
            return twining.withRows(rows);
        } else if (block instanceof Soumak soumak) {
            return soumak.withRows(rows);
        }
        return ((HalfHitch) block).withRows(rows);
    }
}
