package thrumwright.editor;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Soumak;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.measure.Length;

/** The blocks that can be put in, each as it usually is. */
final class NewBlocks {
    private NewBlocks() {}

    /** By the id of the action that puts each in. */
    static Map<String, Block> all() {
        Map<String, Block> all = new LinkedHashMap<>();
        all.put(
                "add-ordering-cord",
                new OrderingCord(Tag.of("ordering"), Use.comingOut(MaterialRole.WARP_CORD), 3, Optional.empty()));
        all.put("add-waste", band("waste", PlainBand.Purpose.WASTE, Use.comingOut(MaterialRole.WASTE), 12));
        all.put("add-twining", new Twining(Tag.of("twining"), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.Z, false));
        all.put("add-half-hitch", new HalfHitch(Tag.of("hitches"), Use.of(MaterialRole.WARP_CORD), 1, 1));
        all.put("add-stiff", band("stiff", PlainBand.Purpose.STIFF, Use.of(MaterialRole.WARP_CORD), 6));
        all.put("add-facing", band("facing", PlainBand.Purpose.FACING, Use.of(MaterialRole.WEFT), 6));
        all.put("add-plain", band("plain", PlainBand.Purpose.PLAIN, Use.of(MaterialRole.WEFT), 4));
        all.put("add-soumak", new Soumak(Tag.of("soumak"), Use.of(MaterialRole.WEFT), 1, 2, 1, Lean.Z, false));
        all.put("add-fold", HemFold.once(Tag.of("fold")));
        all.put("add-open", new OpenWarp(Tag.of("open"), Length.parse("1 cm")));
        all.put("add-finish", new WarpFinish(Tag.of("fringe"), WarpFinish.Kind.KNOTTED, 4, Length.parse("8 cm")));
        return all;
    }

    private static PlainBand band(String id, PlainBand.Purpose purpose, Use use, int picks) {
        return new PlainBand(Tag.of(id), use, purpose, new Amount.Picks(picks), Optional.empty());
    }
}
