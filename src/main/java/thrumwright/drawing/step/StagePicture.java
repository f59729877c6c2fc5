package thrumwright.drawing.step;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;
import thrumwright.drawing.Palette;
import thrumwright.drawing.Pictured;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.StageWords;

/**
 * One stage of how a block is worked, with its words.
 *
 * @param stage from 0; the number in the picture is one more
 * @param caption to stand below it
 * @param says the same for those who hear it, with the block, its place and the stage's number
 */
public record StagePicture(Plan plan, EndPlan end, BlockPlan block, int stage, String caption, String says)
        implements Pictured {
    /** All stages of a block of that end, in their order; at least one. */
    public static List<StagePicture> of(Plan plan, EndPlan end, BlockPlan block, StageWords words) {
        List<String> captions = words.captions(end, block);
        List<String> says = words.says(end, block);
        return IntStream.range(0, captions.size())
                .mapToObj(stage -> new StagePicture(plan, end, block, stage, captions.get(stage), says.get(stage)))
                .toList();
    }

    @Override
    public void paint(Graphics2D g, Palette palette, Font font, Rectangle2D box) {
        new StepPainter(g, palette, font).stage(box, plan, end, block, stage);
    }
}
