package thrumwright.plan.comparison;

import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.Cases;
import thrumwright.block.Hemstitching;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Tag;
import thrumwright.block.Use;
import thrumwright.block.UsualCases;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;

/** Strips blocks of what is compared elsewhere, so that what remains can be compared as a whole. */
final class Likeness {
    private static final Tag NOBODY = Tag.of("any");
    private static final Use ANY = Use.of(MaterialRole.WEFT);
    private static final PlainBand PLAIN =
            new PlainBand(NOBODY, ANY, PlainBand.Purpose.PLAIN, new Amount.Picks(1), Optional.empty());

    private static final Cases<Block> BARE = new UsualCases<>() {
        @Override
        public Block usual(Block block) {
            Block worked = block.woven()
                    .<Block>map(woven -> woven.unforced().withRows(1).withLean(Lean.S, false))
                    .orElse(block);
            return worked.takesYarn()
                    .<Block>map(taking -> taking.withUse(ANY))
                    .orElse(worked)
                    .withTag(NOBODY);
        }

        /** Which picks it goes round follows from the end that it is in. */
        @Override
        public Block hemstitching(Hemstitching stitching) {
            return usual(stitching.withRound(Hemstitching.Round.FIRST));
        }

        @Override
        public Block openWarp(OpenWarp warp) {
            return open();
        }
    };

    private static final Cases<Block> SEEN = new UsualCases<>() {
        @Override
        public Block usual(Block block) {
            return bare(block);
        }

        @Override
        public Block orderingCord(OrderingCord cord) {
            return PLAIN;
        }

        @Override
        public Block plainBand(PlainBand band) {
            return PLAIN;
        }
    };

    private Likeness() {}

    /** A block without name, yarn, amount, shed, side and lean: only how it is worked. */
    static Block bare(Block block) {
        return block.of(BARE);
    }

    /** The same as the eye takes it: all plain weave is alike, whatever it is for. */
    static Block seen(Block block) {
        return block.of(SEEN);
    }

    /** Bare warp. */
    static OpenWarp open() {
        return new OpenWarp(NOBODY, Length.of(1, Unit.MILLIMETRE));
    }
}
