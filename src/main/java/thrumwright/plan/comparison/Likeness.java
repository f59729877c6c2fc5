package thrumwright.plan.comparison;

import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Tag;
import thrumwright.block.TakesYarn;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;

/** Strips blocks of what is compared elsewhere, so that what remains can be compared as a whole. */
final class Likeness {
    private static final Tag NOBODY = Tag.of("any");
    private static final Use ANY = Use.of(MaterialRole.WEFT);
    private static final Amount ONE = new Amount.Picks(1);

    private Likeness() {}

    /** A block without name, yarn, amount, shed, side and lean: only how it is worked. */
    static Block bare(Block block) {
        if (block instanceof PlainBand band) {
            return new PlainBand(NOBODY, ANY, band.purpose(), ONE, Optional.empty());
        } else if (block instanceof OrderingCord) {
            return new OrderingCord(NOBODY, ANY, 1, Optional.empty());
        } else if (block instanceof SpreadHeader header) {
            return new SpreadHeader(NOBODY, ANY, 1, header.strands(), Optional.empty());
        } else if (block instanceof Twining twining) {
            return new Twining(NOBODY, ANY, 1, twining.endsPerGroup(), Lean.S, false);
        } else if (block instanceof Soumak soumak) {
            return new Soumak(NOBODY, ANY, 1, soumak.over(), soumak.under(), Lean.S, false);
        } else if (block instanceof HalfHitch hitch) {
            return new HalfHitch(NOBODY, ANY, 1, hitch.endsPerGroup());
        } else if (block instanceof OpenWarp) {
            return open();
        } else if (block instanceof YarnBlock yarn) {
            return yarn.unforced().withUse(ANY).withTag(NOBODY);
        } else if (block instanceof TakesYarn other) {
            return other.withUse(ANY).withTag(NOBODY);
        }
        return block.withTag(NOBODY);
    }

    /** The same as the eye takes it: all plain weave is alike, whatever it is for. */
    static Block seen(Block block) {
        return block instanceof PlainBand || block instanceof OrderingCord
                ? new PlainBand(NOBODY, ANY, PlainBand.Purpose.PLAIN, ONE, Optional.empty())
                : bare(block);
    }

    /** Bare warp. */
    static OpenWarp open() {
        return new OpenWarp(NOBODY, Length.of(1, Unit.MILLIMETRE));
    }
}
