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
import thrumwright.drawing.step.SlipMove;
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
 * @param moves what of it moves
 */
record ShownKind(Plan plan, EndPlan end, BlockPlan block, Optional<Slip> slip, Moves moves) {
    /** Its yarn going in: by itself, and with its slip beside it as it must be. */
    private record Moves(Optional<Move> alone, Optional<SlipMove> right, Optional<SlipMove> wrong) {
        static Moves of(Plan plan, BlockPlan block, Optional<Slip> slip) {
            return new Moves(
                    Move.of(plan, plan.start(), block),
                    slip.flatMap(one -> SlipMove.of(plan, block, one, true)),
                    slip.flatMap(one -> SlipMove.of(plan, block, one, false)));
        }
    }

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
        Optional<Slip> slip = Slip.of(planned);
        return new ShownKind(plan, plan.start(), planned, slip, Moves.of(plan, planned, slip));
    }

    /** Whether its yarn is seen to go in; what is done with warp ends stands still. */
    boolean movable() {
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
            slipping(right)
                    .ifPresentOrElse(
                            move -> move.paint(g, palette, font, box, laid),
                            () -> painter.slip(box, plan, end, block, slip.get(), right));
            return;
        }
        moves.alone()
                .ifPresentOrElse(
                        move -> move.paint(g, palette, font, box, row(laid), ofRow(laid)),
                        () -> painter.paint(box, plan, end, block));
    }

    /** What of the picture in a box is different once its yarn is laid in from one share to another. */
    Rectangle2D changed(Rectangle2D box, boolean right, double before, double now) {
        if (slip.isPresent()) {
            return slipping(right).map(move -> move.changed(box, before, now)).orElse(box);
        }
        return moves.alone()
                .filter(move -> row(before) == row(now))
                .map(move -> move.changed(box, row(now), ofRow(before), ofRow(now)))
                .orElse(box);
    }

    private Optional<SlipMove> slipping(boolean right) {
        return right ? moves.right() : moves.wrong();
    }

    /** The row that is laid in, from 0. */
    private int row(double laid) {
        int rows = moves.alone().map(Move::rows).orElse(1);
        return (int) Math.min(laid * rows, rows - 1e-6);
    }

    private double ofRow(double laid) {
        int rows = moves.alone().map(Move::rows).orElse(1);
        return laid >= 1 ? 1 : laid * rows - row(laid);
    }
}
