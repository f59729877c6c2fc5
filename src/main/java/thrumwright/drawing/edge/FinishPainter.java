package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.block.WarpFinish;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** Groups of warp ends knotted, plied or plaited, a few groups wide, hanging down. */
final class FinishPainter {
    private static final int GROUPS = 3;
    private static final int MOST_IN_GROUP = 6;
    /** Shares of the box: the cloth, and its margin beside the ends. */
    private static final double CLOTH = 0.24;

    private static final double MARGIN = 0.05;
    /** Shares of the way from the edge to the tips: where a knot belongs, and where knots are that were left to slide. */
    private static final double HIGH_KNOT = 0.14;

    private static final double[] LOW_KNOTS = {0.5, 0.22, 0.36};

    private final EdgePen pen;
    private final EdgeView view;

    FinishPainter(EdgeView view) {
        this.view = view;
        this.pen = new EdgePen(view.g(), view.palette());
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end, WarpFinish finish) {
        int size = Math.max(1, Math.min(finish.endsPerGroup(), MOST_IN_GROUP));
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        double pitch = box.getWidth() * (1 - 2 * MARGIN) / (GROUPS * size);
        double left = box.getMinX() + box.getWidth() * MARGIN + pitch / 2;
        FringeGroup.Hanging first = new FringeGroup.Hanging(
                left, pitch, size, edge, edge + HIGH_KNOT * (box.getMaxY() - edge), box.getMaxY());
        Color warp = view.palette().yarn(plan.piece().warpYarn().colour());
        List<FringeGroup> groups = groups(first, warp);
        for (int i = 0; i < GROUPS; i++) {
            draw(groups.get(i), finish.kind(), i);
        }
        pen.cloth(box, edge, left, pitch, GROUPS * size, plan, end);
        if (view.staged()) {
            stages(groups.get(1), finish.kind()).ways(view.hand(box), view.stage());
        }
    }

    private List<FringeGroup> groups(FringeGroup.Hanging first, Color warp) {
        List<FringeGroup> groups = new ArrayList<>();
        int before = 0;
        for (int group = 0; group < GROUPS; group++) {
            double x = first.first() + before * first.pitch();
            FringeGroup.Hanging place = view.slipped()
                    ? first.with(x, uneven(group, first.size()), LOW_KNOTS[group])
                    : first.with(x, first.size(), HIGH_KNOT);
            groups.add(new FringeGroup(view.g(), pen, warp, place));
            before += place.size();
        }
        return groups;
    }

    /** At a stage the group in the middle is worked; that to its left is done. */
    private void draw(FringeGroup group, WarpFinish.Kind kind, int number) {
        if (!view.staged() || number == 0) {
            whole(group, kind);
        } else if (number > 1) {
            group.straight();
        } else {
            stages(group, kind).draw(view.stage());
        }
    }

    private static void whole(FringeGroup group, WarpFinish.Kind kind) {
        switch (kind) {
            case KNOTTED -> group.knotted();
            case PLIED -> group.corded(2);
            case PLAITED -> group.corded(3);
            case DARNED -> throw new IllegalArgumentException("darned ends are drawn from the back");
        }
    }

    private static GroupStages stages(FringeGroup group, WarpFinish.Kind kind) {
        return switch (kind) {
            case PLIED -> new PliedStages(group);
            case PLAITED -> new PlaitedStages(group);
            default -> new KnottedStages(group);
        };
    }

    /** As many ends in all, but not in each group. */
    private static int uneven(int group, int size) {
        return group == 1 ? size + 2 * (size / 2) : size - size / 2;
    }
}
