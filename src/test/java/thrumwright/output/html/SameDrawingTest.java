package thrumwright.output.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.Slip;
import thrumwright.drawing.step.StepPainter;
import thrumwright.output.svg.SvgCanvas;
import thrumwright.output.svg.SvgSymbols;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.Seeds;

/** What follows from the same looks the same, so that in a class one drawing may stand for another loom's. */
class SameDrawingTest {
    private static final Rectangle2D BOX = new Rectangle2D.Double(0, 0, 253, 167);
    private static final Fonts FONTS = Fonts.load();

    private final Map<Object, String> drawn = new HashMap<>();
    private int again;

    @Test
    void whatFollowsFromTheSameLooksTheSame() {
        int classes = Seeds.of(100);
        for (int seed = 0; seed < classes; seed++) {
            drawn.clear();
            for (Plan plan : ClassPlan.of(new RandomClasses(seed).next(3)).plans()) {
                List.of(Place.values()).forEach(place -> blocks(plan, plan.end(place)));
            }
        }
        assertThat(again).as("drawings that stand for another").isGreaterThan(classes);
    }

    private void blocks(Plan plan, EndPlan end) {
        for (BlockPlan block : end.blocks()) {
            same(StepPainter.likeness(plan, end, block), g -> painter(g).paint(BOX, plan, end, block));
            Slip.of(block)
                    .ifPresent(slip -> List.of(true, false)
                            .forEach(right -> same(
                                    StepPainter.likeness(plan, block, slip, right),
                                    g -> painter(g).slip(BOX, plan, end, block, slip, right))));
        }
    }

    private static StepPainter painter(Graphics2D g) {
        return new StepPainter(g, Palette.onPaper(), FONTS.semibold().deriveFont(10f));
    }

    private void same(Optional<Object> likeness, Consumer<Graphics2D> painting) {
        if (likeness.isEmpty()) {
            return;
        }
        String drawing = SvgCanvas.painted(SvgSymbols.inFile(), BOX.getWidth(), BOX.getHeight(), painting);
        String before = drawn.putIfAbsent(likeness.get(), drawing);
        if (before != null) {
            again++;
            assertThat(drawing).as(likeness.get().toString()).isEqualTo(before);
        }
    }
}
