package thrumwright.testing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import thrumwright.block.Amount;
import thrumwright.block.HemFold;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Destiny;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Meant;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Ticks;
import thrumwright.piece.Top;
import thrumwright.piece.Warp;

/** Pieces for tests. */
public final class Pieces {
    private Pieces() {}

    /** The worked panel as a whole piece: a folded hem at both ends, the top without the ordering cord. */
    public static Piece panel() {
        return new Piece(
                "Worked panel",
                "",
                Destiny.UNSAID,
                new Loom(
                        "Pipe loom",
                        Length.parse("70 cm"),
                        Optional.of(new Loom.Uprights(Length.parse("22 mm"), Length.parse("30 mm"))),
                        Length.parse("4 cm"),
                        Length.parse("12 cm"),
                        Length.parse("80 cm")),
                new Warp(Length.parse("24 cm"), Sett.parse("3/cm"), "cord"),
                List.of(
                        WorkedPanel.cord(),
                        WorkedPanel.weft(),
                        WorkedPanel.weft().withId("waste")),
                "cord",
                "waste",
                new Design(
                        Length.parse("30 cm"), "weft", "weft", Optional.of(Shed.OVER_FIRST), Optional.of(Side.LEFT), 0),
                Habits.usual(UnitSystem.METRIC),
                hemmed(),
                new Top.FollowsStart(Set.of("ordering")),
                Ticks.NONE,
                Measures.NONE,
                Meant.NOTHING);
    }

    /** Ordering cord, waste, twining, stiff band, facing, soumak and the fold along it. */
    public static End hemmed() {
        return new End(List.of(
                new OrderingCord(Tag.of("ordering"), Use.comingOut(MaterialRole.WARP_CORD), 3, Optional.empty()),
                band("waste", Use.comingOut(MaterialRole.WASTE), PlainBand.Purpose.WASTE, 12),
                new Twining(Tag.of("twining"), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.Z, false),
                band("stiff", Use.of(MaterialRole.WARP_CORD), PlainBand.Purpose.STIFF, 6),
                band("facing", Use.of(MaterialRole.WEFT), PlainBand.Purpose.FACING, 6),
                new Soumak(Tag.of("soumak"), Use.of(MaterialRole.WEFT), 1, 2, 1, Lean.Z, false),
                HemFold.once(Tag.of("fold"))));
    }

    public static PlainBand band(String id, Use use, PlainBand.Purpose purpose, int picks) {
        return new PlainBand(Tag.of(id), use, purpose, new Amount.Picks(picks), Optional.empty());
    }

    /** A design whose last pick is known. */
    public static Design ending(Design design, Shed shed, Side side) {
        return new Design(
                design.height(),
                design.firstYarnId(),
                design.lastYarnId(),
                Optional.of(shed),
                Optional.of(side),
                design.relaxing());
    }
}
