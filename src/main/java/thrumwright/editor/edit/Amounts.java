package thrumwright.editor.edit;

import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Supplier;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.PlainBand;
import thrumwright.block.SlitBand;
import thrumwright.block.YarnBlock;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;

/** How much of a block there is: picks, rows or a height, whichever way it was typed. */
public final class Amounts {
    private Amounts() {}

    /** Whether a block has an amount at all; a fold and warp loops have none. */
    public static boolean has(Block block) {
        return block.extent().isPresent();
    }

    /** Whether its amount is how high it stands, so that its edge can be dragged. */
    public static boolean hasHeight(Block block) {
        return block.hasHeight();
    }

    /** As it could be typed here; empty if it has none. */
    public static String text(Block block) {
        return block.extent().map(amount -> Shown.here(amount.text())).orElse("");
    }

    /**
     * The same block with another amount: {@code 6 picks}, {@code 3 rows}, {@code 6}, {@code 1/2 in}, {@code 12 mm}.
     * A height becomes the nearest whole number of rows, but a plain band keeps the height.
     *
     * @throws BadMeasure if it is no amount of such a block
     */
    public static Block with(Block block, String typed, Piece piece, Place place) {
        String text = typed.strip();
        return block.woven()
                .<Block>map(woven -> worked(woven, text, piece, place))
                .orElseGet(() -> block.withExtent(new Amount.Height(
                        Length.parse(text, piece.habits().units().usual()))));
    }

    private static YarnBlock worked(YarnBlock block, String text, Piece piece, Place place) {
        if (block instanceof PlainBand band) {
            return counted(band, () -> band.withAmount(Amount.parse(text)));
        }
        if (block instanceof SlitBand band) {
            return counted(band, () -> band.withAmount(Amount.parse(text)));
        }
        OptionalInt count = Amount.counted(text);
        return count.isPresent()
                ? block.withRows(count.getAsInt())
                : ofHeight(block, counted(block, () -> Length.parse(text)).mm(), piece, place);
    }

    /** What is no length may have been meant as a number: the reason says how to write one. */
    private static <T> T counted(YarnBlock block, Supplier<T> read) {
        try {
            return read.get();
        } catch (BadMeasure e) {
            throw new BadMeasure(block.plainWeave() ? "amount.or-picks" : "amount.or-rows", Map.of("why", e.why()));
        }
    }

    /**
     * The same block as high as that, to whole picks or rows; open warp to whole millimetres or sixteenths of an inch.
     *
     * @param mm height wanted, mm; at least one row comes of it
     * @throws IllegalArgumentException if it has no height
     */
    public static Block ofHeight(Block block, double mm, Piece piece, Place place) {
        if (!block.hasHeight()) {
            throw new IllegalArgumentException("only what is woven, and open warp, has a height");
        }
        return block.woven()
                .<Block>map(woven -> ofHeight(woven, mm, piece, place))
                .orElseGet(() -> block.withExtent(
                        new Amount.Height(rounded(mm, piece.habits().units()))));
    }

    private static YarnBlock ofHeight(YarnBlock block, double mm, Piece piece, Place place) {
        double each = block.withRows(1).height(block.worked(piece.setting(piece.yarnOf(block, place))));
        return block.withRows((int) Math.max(1, Math.min(Amount.MOST_ROWS, Math.round(mm / each))));
    }

    private static Length rounded(double mm, UnitSystem units) {
        if (units == UnitSystem.INCHES) {
            return Length.of(Math.max(1, Math.round(mm / 25.4 * 16)) / 16.0, units.usual());
        }
        return Length.of(Math.max(1, Math.round(mm)) / 10.0, units.usual());
    }
}
