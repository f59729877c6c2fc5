package thrumwright.drawing.step;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.block.Leg;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.drawing.HandWay;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.edge.StrandWay;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Face;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;

/**
 * One stage of how a block is worked with a yarn: the yarn as far as it is led, from the same strands as the whole, and the
 * hand's way with the stage's number.
 *
 * @param font of the number
 */
record StagePainter(Graphics2D g, Palette palette, Font font) {
    /** Share of the box below the step. */
    private static final double BELOW = 0.22;
    /** Room for what is held in the hand: above the rows and beside them, in distances between ends. */
    private static final double ABOVE = 1.7;

    private static final double BESIDE = 1.5;
    /** Of the distance between ends: how long an arrow is that follows no yarn. */
    private static final double ARROW = 1.1;

    void paint(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block, int stage) {
        Work whole = block.work().orElseThrow();
        Work few = whole.block().plainWeave() ? StepScene.shown(whole) : StepScene.closely(whole);
        Led led = Leading.of(few, stage);
        StepScene scene = StepScene.led(few, led);
        View view = view(box, scene);
        new ClothPainter(g, palette, true, Face.FRONT)
                .blocks(
                        view,
                        scene.placed(plan, end, block),
                        scene.tails(),
                        scene.setting(),
                        plan.piece().warpYarn(),
                        view.clothY(box.getMaxY()) - 1,
                        view.clothY(box.getMinY()) + 1);
        ways(HandWay.in(box, g, palette, font), view, scene, led, stage + 1);
    }

    private static View view(Rectangle2D box, StepScene scene) {
        Setting few = scene.setting();
        double s = few.spacing();
        double left = Math.max(BESIDE * s, scene.reach(Side.LEFT));
        double right = Math.max(BESIDE * s, scene.reach(Side.RIGHT));
        double wide = few.span() + left + right;
        double high = scene.height() + Math.max(0, scene.lap()) + ABOVE * s;
        double scale = Math.min(box.getWidth() / wide, box.getHeight() * (1 - BELOW) / high);
        double spare = box.getWidth() - wide * scale;
        return new View(scale, box.getMinX() + spare / 2 + scale * left, box.getMaxY() - BELOW * box.getHeight());
    }

    private void ways(HandWay arrow, View view, StepScene scene, Led led, int number) {
        for (List<Leg> way : led.ways()) {
            StrandWay.along(arrow, view, scene.setting(), way, number);
        }
        for (Row row : led.sets()) {
            setsOut(arrow, view, scene, row, number);
        }
        if (led.push() == Led.Push.DOWN) {
            presses(arrow, view, scene, number);
        } else if (led.push() == Led.Push.OUT) {
            pulls(arrow, view, scene, number);
        }
    }

    /** Above the row, the way it goes. */
    private static void setsOut(HandWay arrow, View view, StepScene scene, Row row, int number) {
        double s = scene.setting().spacing();
        boolean rightward = row.from() == Side.LEFT;
        double from = rightward ? -0.4 * s : scene.setting().span() + 0.4 * s;
        double to = from + (rightward ? ARROW : -ARROW) * s;
        double y = view.y(scene.height() + 1.1 * s);
        arrow.straight(view.x(from), y, view.x(to), y, number);
    }

    /** Away from the warp, where the yarn ends. */
    private static void pulls(HandWay arrow, View view, StepScene scene, int number) {
        List<Row> rows = scene.work().rows();
        double s = scene.setting().spacing();
        boolean right = rows.get(rows.size() - 1).to() == Side.RIGHT;
        double from = right ? scene.setting().span() + 0.4 * s : -0.4 * s;
        double y = view.y(scene.height() + 0.9 * s);
        arrow.straight(view.x(from), y, view.x(from + (right ? ARROW : -ARROW) * s), y, number);
    }

    /** Down on the row, in three places. */
    private static void presses(HandWay arrow, View view, StepScene scene, int number) {
        double s = scene.setting().spacing();
        for (int place = -1; place <= 1; place++) {
            double x = view.x((0.5 + 0.3 * place) * scene.setting().span());
            double top = view.y(scene.rowHeight() + 1.4 * s);
            arrow.straight(x, top, x, view.y(scene.rowHeight() + 0.3 * s), place == 0 ? number : 0);
        }
    }
}
