package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thrumwright.block.WarpFinish;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** Groups of warp ends knotted, plied, plaited or darned in, a few groups wide, hanging down. */
final class FinishPainter {
    private static final int GROUPS = 3;

    private final Graphics2D g;
    private final Palette palette;

    FinishPainter(Graphics2D g, Palette palette) {
        this.g = g;
        this.palette = palette;
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end, WarpFinish finish) {
        AffineTransform kept = g.getTransform();
        if (end.place() == Place.TOP) {
            // the top's warp ends stand up from the edge
            g.translate(0, box.getMinY() + box.getMaxY());
            g.scale(1, -1);
        }
        Color warp = palette.yarn(plan.piece().warpYarn().colour());
        Color stripe = palette.yarn(plan.piece().stripe(end.place()).colour());
        int size = Math.max(1, Math.min(finish.endsPerGroup(), 6));
        double edge = box.getMinY() + box.getHeight() * 0.22;
        double pitch = box.getWidth() * 0.9 / (GROUPS * size);
        double left = box.getMinX() + box.getWidth() * 0.05 + pitch / 2;
        for (int group = 0; group < GROUPS; group++) {
            double first = left + group * size * pitch;
            group(finish.kind(), first, pitch, size, edge, box.getMaxY(), warp);
        }
        cloth(box, edge, stripe);
        if (finish.kind() == WarpFinish.Kind.DARNED) {
            darnedBack(box, left, pitch, GROUPS * size, edge, warp);
        }
        g.setTransform(kept);
    }

    private void cloth(Rectangle2D box, double edge, Color stripe) {
        Rectangle2D cloth = new Rectangle2D.Double(box.getMinX(), box.getMinY(), box.getWidth(), edge - box.getMinY());
        g.setColor(stripe);
        g.fill(cloth);
        g.setColor(Palette.mixed(stripe, Color.BLACK, 0.35));
        g.setStroke(new BasicStroke(1));
        for (double y = edge; y > box.getMinY(); y -= box.getHeight() * 0.045) {
            g.draw(new Line2D.Double(box.getMinX(), y, box.getMaxX(), y));
        }
    }

    /** Where the ends lie behind the cloth. */
    private void darnedBack(Rectangle2D box, double left, double pitch, int ends, double edge, Color warp) {
        g.setColor(warp);
        g.setStroke(new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0));
        for (int i = 0; i < ends; i++) {
            double x = left + i * pitch + pitch * 0.22;
            g.draw(new Line2D.Double(x, edge, x, box.getMinY() + (edge - box.getMinY()) * 0.15));
        }
    }

    private void group(
            WarpFinish.Kind kind, double first, double pitch, int size, double edge, double bottom, Color warp) {
        double middle = first + (size - 1) * pitch / 2;
        double width = Math.min(pitch * 0.55, (bottom - edge) * 0.07);
        double knot = edge + (bottom - edge) * 0.16;
        switch (kind) {
            case KNOTTED -> {
                hanging(first, pitch, size, edge, middle, knot, bottom, width, warp);
                knot(middle, knot, width * 2.4, warp);
            }
            case PLIED -> {
                gather(first, pitch, size, edge, middle, knot, width, warp);
                twisted(middle, knot, bottom * 0.9 + edge * 0.1, width * 1.6, 2, warp);
                knot(middle, bottom * 0.9 + edge * 0.1, width * 2.2, warp);
            }
            case PLAITED -> {
                gather(first, pitch, size, edge, middle, knot, width, warp);
                twisted(middle, knot, bottom * 0.9 + edge * 0.1, width * 1.8, 3, warp);
                knot(middle, bottom * 0.9 + edge * 0.1, width * 2.2, warp);
            }
            case DARNED -> darned(first, pitch, size, edge, bottom, width, warp);
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
            cord(end, width, warp);
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
            cord(end, width, warp);
        }
    }

    /** An overhand knot from the front: two loops crossing. */
    private void knot(double x, double y, double size, Color warp) {
        Path2D loop = new Path2D.Double();
        loop.moveTo(x - size * 0.75, y - size * 0.25);
        loop.curveTo(x - size * 0.2, y - size * 0.75, x + size * 0.9, y - size * 0.3, x + size * 0.6, y + size * 0.35);
        cord(loop, size * 0.62, warp);
        Path2D across = new Path2D.Double();
        across.moveTo(x + size * 0.75, y - size * 0.3);
        across.curveTo(x + size * 0.2, y + size * 0.1, x - size * 0.2, y + size * 0.25, x - size * 0.7, y + size * 0.4);
        cord(across, size * 0.62, warp);
    }

    /** Strands that wind about each other: two plied, three plaited; whichever lies in front is drawn last. */
    private void twisted(double x, double from, double to, double size, int strands, Color warp) {
        double pitch = size * (strands == 2 ? 3.2 : 5.4);
        double step = pitch / 24;
        List<double[]> spots = new ArrayList<>();
        for (double y = from; y < to; y += step) {
            for (int s = 0; s < strands; s++) {
                double phase = 2 * Math.PI * ((y - from) / pitch + (double) s / strands);
                double across = Math.sin(phase) * size * (strands == 2 ? 0.5 : 0.8);
                double depth = strands == 2 ? Math.cos(phase) : Math.sin(2 * phase);
                spots.add(new double[] {x + across, y, depth});
            }
        }
        spots.sort(Comparator.comparingDouble(spot -> spot[2]));
        double r = size * 0.48;
        for (double[] spot : spots) {
            double light = (spot[2] + 1) / 2;
            g.setColor(Palette.mixed(Palette.mixed(warp, Color.BLACK, 0.45), warp, light));
            g.fill(new Ellipse2D.Double(spot[0] - r, spot[1] - r * 0.7, 2 * r, 1.4 * r));
        }
    }

    /** Each end turned back up along its neighbour, behind the cloth. */
    private void darned(double first, double pitch, int size, double edge, double bottom, double width, Color warp) {
        for (int i = 0; i < size; i++) {
            double x = first + i * pitch;
            double turn = edge + (bottom - edge) * 0.18;
            Path2D loop = new Path2D.Double();
            loop.moveTo(x - pitch * 0.22, edge);
            loop.curveTo(x - pitch * 0.22, turn, x + pitch * 0.22, turn, x + pitch * 0.22, edge);
            cord(loop, width, warp);
        }
    }

    private void cord(Path2D path, double width, Color colour) {
        g.setStroke(new BasicStroke((float) (width * 1.18 + 0.4), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(Palette.mixed(colour, Color.BLACK, 0.5));
        g.draw(path);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(colour);
        g.draw(path);
        g.setStroke(new BasicStroke((float) (width * 0.3), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(Palette.mixed(colour, Color.WHITE, 0.4));
        g.draw(path);
    }
}
