package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.block.WarpFinish;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.YarnPen;
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
    /** Page units as they are, but counted upwards. */
    private static final View PAGE = new View(1, 0, 0);

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
            double knot = slipped ? LOW_KNOTS[group] : HIGH_KNOT;
            group(finish.kind(), before, left + before * pitch, pitch, own, edge, box.getMaxY(), knot, warp);
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
            double x = left + i * pitch + beside(i, ends) * pitch;
            Line2D line =
                    new Line2D.Double(x, edge, x, box.getMinY() + (edge - box.getMinY()) * (0.12 + 0.14 * (i % 3)));
            pen.dashed(line, thin * 2.2f, thin, Palette.mixed(warp, Color.BLACK, 0.65));
            pen.dashed(line, thin, thin, warp);
        }
    }

    private void group(
            WarpFinish.Kind kind,
            int before,
            double first,
            double pitch,
            int size,
            double edge,
            double bottom,
            double down,
            Color warp) {
        double middle = first + (size - 1) * pitch / 2;
        double width = Math.min(
                pitch * (kind == WarpFinish.Kind.DARNED ? 0.3 : 0.55),
                (bottom - edge) * (kind == WarpFinish.Kind.DARNED ? 0.3 : 0.07));
        double knot = edge + (bottom - edge) * down;
        switch (kind) {
            case KNOTTED -> {
                hanging(first, pitch, size, edge, middle, knot, bottom, width, warp);
                pen.knot(middle, knot, width * 2.4, warp);
            }
            case PLIED -> {
                gather(first, pitch, size, edge, middle, knot, width, warp);
                twisted(middle, knot, bottom * 0.9 + edge * 0.1, width * 1.6, 2, warp);
                pen.knot(middle, bottom * 0.9 + edge * 0.1, width * 2.2, warp);
            }
            case PLAITED -> {
                gather(first, pitch, size, edge, middle, knot, width, warp);
                twisted(middle, knot, bottom * 0.9 + edge * 0.1, width * 1.8, 3, warp);
                pen.knot(middle, bottom * 0.9 + edge * 0.1, width * 2.2, warp);
            }
            case DARNED -> darned(before, first, pitch, size, edge, bottom, width, warp);
        }
    }

    private void hanging(
            double first,
            double pitch,
            int size,
            double edge,
            double middle,
            double knot,
            double bottom,
            double width,
            Color warp) {
        gather(first, pitch, size, edge, middle, knot, width, warp);
        for (int i = 0; i < size; i++) {
            double spread = (i - (size - 1) / 2.0) * width * 1.2;
            Path2D end = new Path2D.Double();
            end.moveTo(middle, knot);
            end.curveTo(
                    middle + spread * 0.3,
                    knot + (bottom - knot) * 0.3,
                    middle + spread * 1.3,
                    knot + (bottom - knot) * 0.5,
                    middle + spread * 1.2,
                    bottom - (bottom - edge) * 0.06);
            pen.cord(end, width, warp);
        }
    }

    private void gather(
            double first, double pitch, int size, double edge, double middle, double knot, double width, Color warp) {
        for (int i = 0; i < size; i++) {
            double x = first + i * pitch;
            Path2D end = new Path2D.Double();
            end.moveTo(x, edge - 2);
            end.curveTo(
                    x,
                    edge + (knot - edge) * 0.5,
                    middle + (x - middle) * 0.4,
                    knot - (knot - edge) * 0.3,
                    middle + (x - middle) * 0.25,
                    knot);
            pen.cord(end, width, warp);
        }
    }

    /**
     * Strands that wind about each other: two plied, three plaited. Each is cut where it passes to the front or back;
     * what lies behind is drawn first.
     */
    private void twisted(double x, double from, double to, double size, int strands, Color warp) {
        double pitch = size * (strands == 2 ? 3.4 : 5);
        List<Stretch> cut = new ArrayList<>();
        for (int strand = 0; strand < strands; strand++) {
            double phase = 2 * Math.PI * strand / strands;
            double quarter = strands == 2 ? Math.PI : Math.PI / 2;
            double first = strands == 2 ? -Math.PI / 2 : 0;
            double all = phase + 2 * Math.PI * (to - from) / pitch;
            for (double angle = first + Math.floor((phase - first) / quarter) * quarter;
                    angle < all;
                    angle += quarter) {
                double begins = Math.max(phase, angle);
                double ends = Math.min(all, angle + quarter);
                if (ends - begins > 0.05) {
                    cut.add(wound(x, from, size, pitch, strands, phase, begins, ends));
                }
            }
        }
        YarnPen pen = new YarnPen(g, PAGE, warp, 2, Face.FRONT);
        pen.drawInOrder(cut.stream().filter(stretch -> !stretch.front()).toList());
        pen.drawInOrder(cut.stream().filter(Stretch::front).toList());
    }

    private static Stretch wound(
            double x, double from, double size, double pitch, int strands, double phase, double begins, double ends) {
        int points = 9;
        double[] xs = new double[points];
        double[] ys = new double[points];
        double[] widths = new double[points];
        double[] lifts = new double[points];
        for (int i = 0; i < points; i++) {
            double angle = begins + (ends - begins) * i / (points - 1);
            double depth = strands == 2 ? Math.cos(angle) : Math.sin(2 * angle);
            xs[i] = x + Math.sin(angle) * size * (strands == 2 ? 0.40 : 0.70);
            ys[i] = -(from + pitch * (angle - phase) / (2 * Math.PI));
            double near = Math.sqrt(Math.max(0, Math.abs(depth)));
            widths[i] = size * (strands == 2 ? 0.45 + 0.57 * near : 0.5 + 0.36 * near);
            lifts[i] = Math.abs(depth);
        }
        double middle = (begins + ends) / 2;
        boolean front = (strands == 2 ? Math.cos(middle) : Math.sin(2 * middle)) > 0;
        return new Stretch(front, begins, ends - begins, false, false, xs, ys, widths, lifts);
    }

    /** Where an end is darned back, in distances between ends: towards its right neighbour, the last one to its left. */
    private static double beside(int end, int ends) {
        return end == ends - 1 ? -0.4 : 0.4;
    }

    /** Each end turned back up beside its neighbour, behind the cloth. */
    private void darned(
            int before, double first, double pitch, int size, double edge, double bottom, double width, Color warp) {
        for (int i = 0; i < size; i++) {
            double x = first + i * pitch;
            double back = x + beside(before + i, GROUPS * size) * pitch;
            double turn = edge + (bottom - edge) * 0.75;
            Path2D loop = new Path2D.Double();
            loop.moveTo(x, edge - 2);
            loop.curveTo(x, turn, back, turn, back, edge - 2);
            pen.cord(loop, width, warp);
        }
    }
}
