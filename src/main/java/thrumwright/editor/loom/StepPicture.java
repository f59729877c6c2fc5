package thrumwright.editor.loom;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.Move;
import thrumwright.drawing.step.StepPainter;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.Step;

/**
 * The picture of a step.
 *
 * @param move of a step that is woven; other steps have a picture that stands still
 */
record StepPicture(Plan plan, EndPlan end, BlockPlan block, Optional<Move> move) {
    static Optional<StepPicture> of(Plan plan, Step step) {
        return step.picture().flatMap(shown -> {
            EndPlan end = plan.end(shown.place());
            // off the loom the hem and the edge are shown, not the weaving
            return end.block(shown.blockId())
                    .map(block -> new StepPicture(
                            plan, end, block, step.rows().isEmpty() ? Optional.empty() : Move.of(plan, end, block)));
        });
    }

    /**
     * @param row of the block, from 0
     * @param laid share of its yarn, 0 to 1
     */
    void paint(Graphics2D g, Palette palette, Font font, Rectangle2D box, int row, double laid) {
        move.ifPresentOrElse(
                moving -> moving.paint(g, palette, font, box, moving.shows(row), laid),
                () -> new StepPainter(g, palette, font).paint(box, plan, end, block));
    }

    /** What of it in a box is different once the yarn of a row is laid in from one share to another. */
    Rectangle2D changed(Rectangle2D box, int row, double before, double now) {
        return move.map(moving -> moving.changed(box, moving.shows(row), before, now))
                .orElse(box);
    }

    /** Where the yarn of a row passes from front to back; nothing but the whole row where nothing moves. */
    List<Double> crossings(int row) {
        return move.map(moving -> moving.crossings(moving.shows(row))).orElse(List.of(1.0));
    }
}
