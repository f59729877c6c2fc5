package thrumwright.drawing.step;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.OpenWarp;
import thrumwright.block.Setting;
import thrumwright.drawing.Dimension;
import thrumwright.drawing.HandWay;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.WarpPen;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/**
 * Warp that is left open: the gap between what was woven before and what comes next, with its height; or the card that keeps
 * it, and what is woven on top of that.
 */
record OpenPainter(Graphics2D g, Palette palette, Font font) {
    /** No stage: what comes of it. */
    static final int WHOLE = -1;

    private static final int ENDS = 6;
    /** Shares of the box: below the gap, and above it, where something is woven there. */
    private static final double BELOW = 0.22;

    private static final double ABOVE = 0.18;
    private static final double WOVEN_ABOVE = 0.4;

    /** The gap on the page: the weaving below it ends at {@code low}, it reaches up to {@code high}. */
    private record Gap(View view, Setting few, double low, double high) {
        double left() {
            return view.x(-0.8 * few.spacing());
        }

        double right() {
            return view.x(few.span() + 0.8 * few.spacing());
        }
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block, OpenWarp open, int stage) {
        Setting whole = plan.piece().setting(plan.piece().warpYarn());
        double s = whole.spacing();
        int ends = Math.min(whole.ends(), ENDS);
        double thick = Math.max(0.2 * s, whole.warp());
        Setting few = new Setting(ends, s, thick, whole.relaxed(), whole.beaten(), Optional.empty());
        double scale = box.getWidth() / (few.span() + 6 * s);
        View view = new View(scale, box.getMinX() + 1.5 * s * scale, box.getMaxY() - BELOW * box.getHeight());
        double above = stage == 1 ? WOVEN_ABOVE : ABOVE;
        Gap gap = new Gap(view, few, view.y(0), box.getMinY() + above * box.getHeight());
        cloth(box, plan, end, block, gap, stage == 1);
        if (stage == WHOLE) {
            measure(gap, plan.piece().shown().height(open.height().mm()));
        } else {
            card(gap, plan.piece().warpYarn());
            way(HandWay.in(box, g, palette, font), gap, stage);
        }
    }

    private void cloth(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block, Gap gap, boolean above) {
        View view = gap.view();
        new ClothPainter(g, palette, true, Face.FRONT)
                .blocks(
                        view,
                        woven(end, block, gap, above),
                        List.of(),
                        gap.few(),
                        plan.piece().warpYarn(),
                        view.clothY(box.getMaxY()) - 1,
                        view.clothY(box.getMinY()) + 1);
    }

    private static List<ClothPainter.PlacedBlock> woven(EndPlan end, BlockPlan block, Gap gap, boolean above) {
        List<ClothPainter.PlacedBlock> placed = new ArrayList<>();
        StepScene.below(end, block, gap.few().ends()).ifPresent(placed::add);
        double up = gap.view().clothY(gap.high());
        StepScene.above(end, block, gap.few().ends())
                .filter(next -> above)
                .map(next -> new ClothPainter.PlacedBlock(next.picture(), up, next.height()))
                .ifPresent(placed::add);
        return placed;
    }

    private void measure(Gap gap, String height) {
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0));
        g.draw(new Line2D.Double(gap.left(), gap.high(), gap.right(), gap.high()));
        double beside = gap.view().length(0.3 * gap.few().spacing());
        new Dimension(g, palette.ink(), font).upright(gap.right() + beside, gap.low(), gap.high(), height);
    }

    /** Over one end and under the next. */
    private void card(Gap gap, Yarn warp) {
        double air = 0.04 * (gap.low() - gap.high());
        Rectangle2D card = new Rectangle2D.Double(
                gap.left(), gap.high() + air, gap.right() - gap.left(), gap.low() - gap.high() - 2 * air);
        g.setColor(palette.post());
        g.fill(card);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(card);
        View view = gap.view();
        WarpPen pen = new WarpPen(g, view, palette.yarn(warp.colour()), warp.plies(), Face.FRONT);
        for (int end = 1; end < gap.few().ends(); end += 2) {
            pen.draw(gap.few().spacing(), gap.few().warp(), end, end, view.clothY(gap.low()), view.clothY(gap.high()));
        }
    }

    private void way(HandWay hand, Gap gap, int stage) {
        double s = gap.view().length(gap.few().spacing());
        double y = stage == 0 ? (gap.low() + gap.high()) / 2 : gap.high() - 0.8 * s;
        double x = gap.right() + (stage == 0 ? 2 : 1.6) * s;
        hand.straight(x, y, gap.right() + 0.3 * s, y, stage + 1);
    }
}
