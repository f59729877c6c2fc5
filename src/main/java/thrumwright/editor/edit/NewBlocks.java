package thrumwright.editor.edit;

import java.util.List;
import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.Hemstitching;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Side;
import thrumwright.block.SlitBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Tag;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;

/** One block of every kind, with amounts to begin from. */
public final class NewBlocks {
    private NewBlocks() {}

    /** In the order in which a start usually stands, from the bottom. */
    public static List<Block> all(UnitSystem units) {
        boolean inches = units == UnitSystem.INCHES;
        return List.of(
                new OrderingCord(tag("ordering"), Use.comingOut(MaterialRole.WARP_CORD), 3, Optional.empty()),
                new SpreadHeader(tag("header"), Use.comingOut(MaterialRole.WASTE), 4, 1, Optional.empty()),
                band("waste", Use.comingOut(MaterialRole.WASTE), PlainBand.Purpose.WASTE, 12),
                new Twining(tag("twining"), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.Z, false),
                new HalfHitch(tag("hitches"), Use.of(MaterialRole.WARP_CORD), 1, 1),
                band("stiff", Use.of(MaterialRole.WARP_CORD), PlainBand.Purpose.STIFF, 6),
                band("facing", Use.of(MaterialRole.WEFT), PlainBand.Purpose.FACING, 6),
                new SlitBand(tag("slits"), Use.of(MaterialRole.WEFT), 30, new Amount.Picks(6), Optional.empty()),
                new Hemstitching(tag("hemstitching"), Use.of(MaterialRole.WEFT), 4, 2, Hemstitching.Round.FIRST),
                new Soumak(tag("soumak"), Use.of(MaterialRole.WEFT), 1, 2, 1, Lean.Z, false),
                HemFold.once(tag("fold")),
                band("plain", Use.of(MaterialRole.WEFT), PlainBand.Purpose.PLAIN, 4),
                new OpenWarp(tag("open"), Length.parse(inches ? "1 in" : "2 cm")),
                finish("knots", WarpFinish.Kind.KNOTTED, 4, inches ? "3 in" : "8 cm"),
                finish("plied", WarpFinish.Kind.PLIED, 4, inches ? "3 in" : "8 cm"),
                finish("plait", WarpFinish.Kind.PLAITED, 6, inches ? "3 in" : "8 cm"),
                finish("darned", WarpFinish.Kind.DARNED, 1, inches ? "2 in" : "5 cm"),
                new KnotRows(
                        tag("rows"), 3, 4, true, Optional.of(Length.parse(inches ? "3/4 in" : "2 cm")), fringe(inches)),
                new WrappedTassels(tag("tassels"), Use.of(MaterialRole.WEFT), 6, 12, fringe(inches)),
                new TurnedEnds(tag("turned"), 1, true, Side.LEFT, Length.parse(inches ? "2 in" : "5 cm")),
                new WovenEdge(tag("woven"), 6, Side.LEFT, Length.parse(inches ? "2 in" : "5 cm")),
                new WarpLoops(tag("loops"), WarpLoops.Held.ROD, Length.parse(inches ? "1/8 in" : "3 mm")));
    }

    private static Length fringe(boolean inches) {
        return Length.parse(inches ? "3 in" : "8 cm");
    }

    /** The one whose kind has that key (see {@link Block#key}). */
    public static Block ofKind(String key, UnitSystem units) {
        return all(units).stream()
                .filter(block -> block.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no kind of block “" + key + "”"));
    }

    private static Tag tag(String id) {
        return Tag.of(id);
    }

    private static PlainBand band(String id, Use use, PlainBand.Purpose purpose, int picks) {
        return new PlainBand(tag(id), use, purpose, new Amount.Picks(picks), Optional.empty());
    }

    private static WarpFinish finish(String id, WarpFinish.Kind kind, int group, String hanging) {
        return new WarpFinish(tag(id), kind, group, Length.parse(hanging));
    }
}
