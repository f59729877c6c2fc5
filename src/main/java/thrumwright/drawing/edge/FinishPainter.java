package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import thrumwright.block.WarpFinish;
import thrumwright.drawing.Palette;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** Groups of warp ends knotted, plied, plaited or darned in, a few groups wide, hanging down. */
final class FinishPainter {
    private static final int GROUPS = 3;
    /** Ends that are darned in go one by one; so many in each third of the picture. */
    private static final int DARNED_SIDE_BY_SIDE = 3;
    /** Shares of the way from the edge to the tips: where a knot belongs, and where knots are that were left to slide. */
    private static final double HIGH_KNOT = 0.16;

    private static final double[] LOW_KNOTS = {0.5, 0.22, 0.36};

    private final Graphics2D g;
    private final Palette palette;
    private final EdgePen pen;
    private final boolean slipped;

    /** @param slipped whether to show what beginners get wrong */
    FinishPainter(Graphics2D g, Palette palette, boolean slipped) {
        this.slipped = slipped;
        this.g = g;
        this.palette = palette;
        this.pen = new EdgePen(g, palette);
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end, WarpFinish finish) {
        Color warp = palette.yarn(plan.piece().warpYarn().colour());
        boolean darned = finish.kind() == WarpFinish.Kind.DARNED;
        int size = darned ? DARNED_SIDE_BY_SIDE : Math.max(1, Math.min(finish.endsPerGroup(), 6));
        double edge = box.getMinY() + box.getHeight() * (darned ? 0.72 : 0.24);
        double pitch = box.getWidth() * 0.9 / (GROUPS * size);
        double left = box.getMinX() + box.getWidth() * 0.05 + pitch / 2;
        int before = 0;
        for (int group = 0; group < GROUPS; group++) {
            int own = slipped ? uneven(group, size) : size;
            double knot = edge + (box.getMaxY() - edge) * (slipped ? LOW_KNOTS[group] : HIGH_KNOT);
            FringeGroup.Hanging place =
                    new FringeGroup.Hanging(left + before * pitch, pitch, own, edge, knot, box.getMaxY());
            new FringeGroup(g, pen, warp, place).draw(finish.kind(), GROUPS * size - 1 - before);
            before += own;
        }
        pen.cloth(box, edge, left, pitch, GROUPS * size, plan, end);
        if (darned) {
            darnedBack(box, left, pitch, GROUPS * size, edge, warp);
        }
    }

    /** As many ends in all, but not in each group. */
    private static int uneven(int group, int size) {
        return group == 1 ? size + 2 * (size / 2) : size - size / 2;
    }

    /** Where the ends lie behind the cloth. */
    private void darnedBack(Rectangle2D box, double left, double pitch, int ends, double edge, Color warp) {
        float thin = (float) Math.max(1.2, Math.min(3, pitch * 0.1));
        for (int i = 0; i < ends; i++) {
            double x = left + i * pitch + FringeGroup.beside(i == ends - 1) * pitch;
            Line2D line =
                    new Line2D.Double(x, edge, x, box.getMinY() + (edge - box.getMinY()) * (0.12 + 0.14 * (i % 3)));
            pen.dashed(line, thin * 2.2f, thin, Palette.mixed(warp, Color.BLACK, 0.65));
            pen.dashed(line, thin, thin, warp);
        }
    }
}
