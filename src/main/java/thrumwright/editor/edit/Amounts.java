package thrumwright.editor.edit;

import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Setting;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Twining;
import thrumwright.block.WarpLoops;
import thrumwright.block.YarnBlock;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;

/** How much of a block there is: picks, rows or a height, whichever way it was typed. */
public final class Amounts {
    private static final Pattern COUNT = Pattern.compile("(\\d{1,6})\\s*(?:picks?|rows?)?");

    private Amounts() {}

    /** Whether a block has an amount at all; a fold and warp loops have none. */
    public static boolean has(Block block) {
        return !(block instanceof HemFold || block instanceof WarpLoops);
    }

    /** Whether its amount is how high it stands, so that its edge can be dragged. */
    public static boolean hasHeight(Block block) {
        return block instanceof YarnBlock || block instanceof OpenWarp;
    }

    /** As it could be typed here; empty if it has none. */
    public static String text(Block block) {
        if (block instanceof PlainBand band) {
            return Shown.here(band.amount().text());
        } else if (block instanceof OrderingCord cord) {
            return new Amount.Picks(cord.picks()).text();
        } else if (block instanceof SpreadHeader header) {
            return new Amount.Picks(header.picks()).text();
        } else if (block instanceof OpenWarp open) {
            return Shown.here(open.height().text());
        } else if (block instanceof EdgeFinish finish) {
            return finish.length().map(length -> Shown.here(length.text())).orElse("");
        }
        return rows(block).map(rows -> rows + (rows == 1 ? " row" : " rows")).orElse("");
    }

    private static Optional<Integer> rows(Block block) {
        if (block instanceof Twining twining) {
            return Optional.of(twining.rows());
        } else if (block instanceof Soumak soumak) {
            return Optional.of(soumak.rows());
        } else if (block instanceof HalfHitch hitch) {
            return Optional.of(hitch.rows());
        }
        return Optional.empty();
    }

    /**
     * The same block with another amount: {@code 6 picks}, {@code 3 rows}, {@code 6}, {@code 1/2 in}, {@code 12 mm}.
     * A height becomes the nearest whole number of rows, but a plain band keeps the height.
     *
     * @throws BadMeasure if it is no amount of such a block
     */
    public static Block with(Block block, String typed, Piece piece, Place place) {
        String text = typed.strip();
        UnitSystem units = piece.habits().units();
        if (block instanceof OpenWarp open) {
            return new OpenWarp(open.tag(), Length.parse(text, units.usual()));
        } else if (block instanceof EdgeFinish finish) {
            return finish.withLength(Length.parse(text, units.usual()));
        } else if (block instanceof PlainBand band) {
            return band.withAmount(counted(block, () -> Amount.parse(text)));
        }
        Matcher count = COUNT.matcher(text);
        if (count.matches()) {
            return withRows(block, Integer.parseInt(count.group(1)));
        }
        return ofHeight(block, counted(block, () -> Length.parse(text)).mm(), piece, place);
    }

    /** What is no length may have been meant as a number: the reason says how to write one. */
    private static <T> T counted(Block block, Supplier<T> read) {
        try {
            return read.get();
        } catch (BadMeasure e) {
            boolean picks =
                    block instanceof PlainBand || block instanceof OrderingCord || block instanceof SpreadHeader;
            throw new BadMeasure(picks ? "amount.or-picks" : "amount.or-rows", Map.of("why", e.why()));
        }
    }

    private static Block withRows(Block block, int rows) {
        if (block instanceof PlainBand band) {
            return band.withAmount(new Amount.Picks(rows));
        } else if (block instanceof OrderingCord cord) {
            return cord.withPicks(rows);
        } else if (block instanceof SpreadHeader header) {
            return header.withPicks(rows);
        } else if (block instanceof Twining twining) {
            return twining.withRows(rows);
        } else if (block instanceof Soumak soumak) {
            return soumak.withRows(rows);
        } else if (block instanceof HalfHitch hitch) {
            return hitch.withRows(rows);
        }
        throw new BadMeasure("amount.none", Map.of());
    }

    /**
     * The same block as high as that, to whole picks or rows; open warp to whole millimetres or sixteenths of an inch.
     *
     * @param mm height wanted; at least one row comes of it
     */
    public static Block ofHeight(Block block, double mm, Piece piece, Place place) {
        if (block instanceof OpenWarp open) {
            return new OpenWarp(open.tag(), rounded(mm, piece.habits().units()));
        }
        if (!(block instanceof YarnBlock yarnBlock)) {
            throw new BadMeasure("amount.no-height", Map.of());
        }
        Setting setting = yarnBlock.worked(piece.setting(piece.yarnOf(yarnBlock, place)));
        double each = ((YarnBlock) withRows(block, 1)).height(setting);
        return withRows(block, (int) Math.max(1, Math.min(Amount.MOST_ROWS, Math.round(mm / each))));
    }

    private static Length rounded(double mm, UnitSystem units) {
        if (units == UnitSystem.INCHES) {
            return Length.of(Math.max(1, Math.round(mm / 25.4 * 16)) / 16.0, units.usual());
        }
        return Length.of(Math.max(1, Math.round(mm)) / 10.0, units.usual());
    }
}
