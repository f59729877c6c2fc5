package thrumwright.drawing.step;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.UnaryOperator;
import thrumwright.drawing.Palette;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;

/**
 * A block alone while it is worked, as it must be or with the slip that beginners make.
 *
 * @param whole its rows as they will be
 * @param strain what stands elsewhere than it should
 */
public record SlipMove(Plan plan, StepScene whole, Slip slip, Strain strain) {
    /**
     * That of a block; empty for one that takes no yarn across the warp, or of which only what becomes of warp ends is shown.
     *
     * @param slip of that block, by {@link Slip#of}
     * @param right whether it is as it must be
     */
    public static Optional<SlipMove> of(Plan plan, BlockPlan block, Slip slip, boolean right) {
        return block.work().filter(work -> block.block().finish().isEmpty()).map(work -> {
            Strain strain = slip.strains() && !right ? Strain.of(slip) : Strain.NONE;
            return new SlipMove(plan, StepScene.of(work, slip, right), slip, strain);
        });
    }

    /**
     * Draws it into a box; nothing goes outside it.
     *
     * @param laid share of its yarn that is laid in, 0 to 1
     */
    public void paint(Graphics2D g, Palette palette, Font font, Rectangle2D box, double laid) {
        new StepPainter(g, palette, font).slip(box, this, whole.laid(laid));
    }

    /**
     * What of the picture in a box is different once more of its yarn is laid in.
     *
     * @param before share that was laid in, 0 to 1
     * @param now as before, later
     */
    public Rectangle2D changed(Rectangle2D box, double before, double now) {
        UnaryOperator<Stretch> drawn = stretch ->
                strain.strained(stretch, whole.setting().span(), whole.picture().height());
        return new MovedPart(box, StepPainter.middle(box, whole), whole, drawn, false).between(before, now);
    }
}
