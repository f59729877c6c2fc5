package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.Material;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Support;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Turning;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WrappedTassels;

/** Writes the blocks of an end. */
final class BlockWriter {
    private BlockWriter() {}

    static Node.Arr blocks(List<Block> blocks, Unknown unknown, String place) {
        List<Node> items = new ArrayList<>();
        for (Block block : blocks) {
            String at = place + "#" + block.id();
            items.add(block(block, unknown, at).done(unknown, at));
        }
        return new Node.Arr(items, Node.Spot.NOWHERE);
    }

    private static Writing block(Block block, Unknown unknown, String place) {
        if (block instanceof OrderingCord cord) {
            Writing writing = begun(block, "ordering cord").with("picks", cord.picks());
            use(writing, cord.use());
            cord.firstShed().ifPresent(shed -> writing.with("first", Choices.SHED.text(shed)));
            return writing;
        } else if (block instanceof PlainBand band) {
            return band(band);
        } else if (block instanceof SpreadHeader header) {
            Writing writing =
                    begun(block, "spread header").with("picks", header.picks()).with("strands", header.strands());
            use(writing, header.use());
            header.firstShed().ifPresent(shed -> writing.with("first", Choices.SHED.text(shed)));
            return writing;
        } else if (block instanceof Twining twining) {
            Writing writing = begun(block, "twining")
                    .with("rows", twining.rows())
                    .with("group", twining.endsPerGroup())
                    .with("twist", Choices.LEAN.text(twining.first()))
                    .with("countered", twining.countered(), false);
            return use(writing, twining.use());
        } else if (block instanceof Soumak soumak) {
            Writing writing = begun(block, "soumak")
                    .with("rows", soumak.rows())
                    .with("over", soumak.over())
                    .with("under", soumak.under())
                    .with("slant", Choices.LEAN.text(soumak.first()))
                    .with("countered", soumak.countered(), false);
            return use(writing, soumak.use());
        } else if (block instanceof HalfHitch hitch) {
            Writing writing =
                    begun(block, "half hitches").with("rows", hitch.rows()).with("group", hitch.endsPerGroup());
            return use(writing, hitch.use());
        } else if (block instanceof HemFold fold) {
            Writing writing =
                    begun(block, "hem fold").with("firstTurn", fold.firstTurn()).with("mitred", fold.mitred(), false);
            fold.band().ifPresent(band -> writing.with("band", band(band, unknown, place + "/band")));
            fold.support().ifPresent(support -> support(writing, support, unknown, place));
            return writing;
        } else if (block instanceof OpenWarp open) {
            return begun(block, "open warp").with("height", open.height());
        } else if (block instanceof KnotRows knots) {
            return begun(block, "rows of knots")
                    .with("rows", knots.rows())
                    .with("group", knots.endsPerGroup())
                    .with("split", knots.split(), false)
                    .with("apart", knots.apart())
                    .with("hanging", knots.hanging());
        } else if (block instanceof TurnedEnds turned) {
            return begun(block, "turned ends")
                    .with("over", turned.over())
                    .with("bothWays", turned.bothWays(), false)
                    .with("from", Choices.SIDE.text(turned.from()))
                    .with("hanging", turned.back());
        } else if (block instanceof WrappedTassels tassels) {
            Writing writing = begun(block, "wrapped tassels")
                    .with("group", tassels.endsPerGroup())
                    .with("turns", tassels.turns())
                    .with("hanging", tassels.hanging());
            return use(writing, tassels.use());
        }
        if (block instanceof WarpLoops loops) {
            return begun(block, "warp loops")
                    .with("round", Choices.HELD.text(loops.round()))
                    .with("thick", loops.thick());
        }
        WarpFinish finish = (WarpFinish) block;
        return begun(block, "warp finish")
                .with("ends", Choices.FINISH.text(finish.kind()))
                .with("group", finish.endsPerGroup())
                .with("hanging", finish.hanging());
    }

    private static void support(Writing writing, Support support, Unknown unknown, String place) {
        if (support instanceof Support.RoundBar bar) {
            writing.with("bar", bar.diameter());
        } else if (support instanceof Support.Strip strip) {
            writing.with("strip", strip.width());
        } else if (support instanceof Support.Slat slat) {
            writing.with(
                    "slat",
                    new Writing()
                            .with("width", slat.width())
                            .with("thickness", slat.thickness())
                            .done(unknown, place + "/slat"));
        }
    }

    private static Node band(Turning.Faced band, Unknown unknown, String place) {
        return new Writing()
                .with("width", band.width())
                .with("thickness", band.thickness())
                .done(unknown, place);
    }

    private static Writing begun(Block block, String kind) {
        return new Writing()
                .with("kind", kind)
                .with("id", block.id())
                .withText("label", block.tag().label())
                .withText("words", block.tag().words());
    }

    private static Writing band(PlainBand band) {
        Writing writing = begun(band, "plain band").with("for", Choices.PURPOSE.text(band.purpose()));
        if (band.amount() instanceof Amount.Picks picks) {
            writing.with("picks", picks.count());
        } else {
            writing.with("height", ((Amount.Height) band.amount()).height());
        }
        use(writing, band.use());
        band.firstShed().ifPresent(shed -> writing.with("first", Choices.SHED.text(shed)));
        return writing;
    }

    private static Writing use(Writing writing, Use use) {
        if (use.material() instanceof Material.Own own) {
            writing.with("yarn", own.yarnId());
        } else {
            writing.with("of", Choices.ROLE.text(((Material.Part) use.material()).role()));
        }
        writing.with("comesOut", use.comesOut(), false);
        use.from().ifPresent(side -> writing.with("from", Choices.SIDE.text(side)));
        return writing;
    }
}
