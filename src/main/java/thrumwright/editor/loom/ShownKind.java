package thrumwright.editor.loom;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.Move;
import thrumwright.drawing.step.Slip;
import thrumwright.drawing.step.StepPainter;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;
import thrumwright.output.part.SlipPicture;
import thrumwright.piece.Beginnings;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/**
 * A kind of block on a warp of its own, to be shown to a class.
 *
 * @param slip what beginners get wrong in it, if there is a picture of it
 */
record ShownKind(Plan plan, EndPlan end, BlockPlan block, Optional<Slip> slip) {
    static ShownKind of(Block block) {
        ShownKind alone = of(block, new End(List.of(block)));
        return alone.block().fold().isPresent() ? of(block, onFacing(block)) : alone;
    }

    /** So that a fold has something to fold. */
    private static End onFacing(Block fold) {
        return new End(List.of(NewBlocks.ofKind("plain-facing", UnitSystem.METRIC), fold));
    }

    private static ShownKind of(Block block, End start) {
        Piece piece = Beginnings.empty(UnitSystem.METRIC).withStart(start).withTop(new Top.OnItsOwn(End.empty()));
        Plan plan = Plan.of(piece);
        BlockPlan planned = plan.end(Place.START).block(block.id()).orElseThrow();
        return new ShownKind(plan, plan.start(), planned, Slip.of(planned));
    }

    /** Whether its yarn is seen to go in; what is done with warp ends stands still. */
    boolean moves() {
        return block.work().isPresent();
    }

    /** What is said below a picture; empty where there is one picture only. */
    String caption(boolean right, Phrases phrases) {
        return slip.map(one -> SlipPicture.caption(one, block, right, phrases)).orElse("");
    }

    /**
     * @param right whether as it must be; else with its slip
     * @param laid share of its yarn, 0 to 1
     */
    void paint(Graphics2D g, Palette palette, Font font, Rectangle2D box, boolean right, double laid) {
        StepPainter painter = new StepPainter(g, palette, font);
        if (slip.isPresent()) {
            painter.slip(box, plan, end, block, slip.get(), right, laid);
            return;
        }
        Optional<Move> move = Move.of(plan, end, block);
        if (move.isEmpty()) {
            painter.paint(box, plan, end, block);
            return;
        }
        int rows = move.get().rows();
        double at = Math.min(laid * rows, rows - 1e-6);
        move.get().paint(g, palette, font, box, (int) at, laid >= 1 ? 1 : at - (int) at);
    }
}
