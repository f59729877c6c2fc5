package thrumwright.drawing.hem;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.Optional;
import thrumwright.block.Shed;
import thrumwright.drawing.Palette;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;

/** The cloth of a hem, cut along the first warp end: the warp as a line, yarns as sections. */
record HemCloth(Graphics2D g, Palette palette, HemPlacing placing, HemLine bend) {
    /** Rows that are nearer than this many units can't be told apart, and are drawn as one. */
    private static final double FINEST = 0.15;

    private static final int STEPS = 240;

    /** @param shownFront how much of the front is shown beyond the fold, mm */
    void draw(Plan plan, EndPlan end, Hem hem, double shownFront) {
        double first = hem.band().map(band -> -band.ends()).orElse(0.0);
        double last = hem.cloth() + shownFront;
        Path2D warp = line(first, last, 0);
        double warpDiameter = plan.piece().warpYarn().diameter();
        stroke(warp, plan, warpDiameter * placing.scale());
        for (BlockPlan block : end.blocks()) {
            if (block.stays()) {
                rows(block, along(end, hem, block), end.place() == Place.START);
            }
        }
        design(plan, end, hem, last);
    }

    /** What lies so far outward of the bend, from one place along the cloth to another, mm. */
    private Path2D line(double first, double last, double outward) {
        Path2D line = new Path2D.Double();
        for (int i = 0; i <= STEPS; i++) {
            double[] at = bend.at(first + (last - first) * i / STEPS);
            double x = placing.x(at[0] + Math.sin(at[2]) * outward);
            double y = placing.y(at[1] - Math.cos(at[2]) * outward);
            if (i == 0) {
                line.moveTo(x, y);
            } else {
                line.lineTo(x, y);
            }
        }
        return line;
    }

    private void stroke(Path2D warp, Plan plan, double width) {
        stroke(warp, palette.yarn(plan.piece().warpYarn().colour()), width);
    }

    private void stroke(Path2D warp, Color colour, double width) {
        g.setStroke(new BasicStroke((float) width + 1, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(Palette.mixed(colour, Color.BLACK, 0.5));
        g.draw(warp);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(colour);
        g.draw(warp);
    }

    /** Where a block's outer edge lies along the cloth, from the hem's outer edge. */
    static double along(EndPlan end, Hem hem, BlockPlan block) {
        return end.place() == Place.START
                ? hem.cloth() - (hem.foldLine() - block.bottom())
                : hem.cloth() - (block.top() - hem.foldLine());
    }

    private void rows(BlockPlan block, double from, boolean upwards) {
        Work work = block.work().orElseThrow();
        int rows = work.rows().size();
        double each = block.height() / rows;
        if (each * placing.scale() < FINEST) {
            cover(work, Math.max(0, from), from + block.height());
            return;
        }
        for (int i = 0; i < rows; i++) {
            double u = from + (i + 0.5) * each;
            if (u < 0) {
                // beyond what comes out there is no cloth of this hem
                continue;
            }
            int row = upwards ? i : rows - 1 - i;
            Optional<Shed> shed = work.rows().get(row).shed();
            double radius = (work.setting().warp() + work.setting().beaten()) / 2;
            boolean over = shed.equals(Optional.of(Shed.OVER_FIRST));
            if (shed.isEmpty() || over) {
                section(u, radius, work, each);
            }
            if (shed.isEmpty() || !over) {
                section(u, -radius, work, each);
            }
        }
    }

    /** Rows that can't be told apart, on both sides of the warp. */
    private void cover(Work work, double from, double to) {
        double radius = (work.setting().warp() + work.setting().beaten()) / 2;
        Color colour = palette.yarn(work.yarn().colour());
        if (from < to) {
            stroke(line(from, to, radius), colour, work.setting().beaten() * placing.scale());
            stroke(line(from, to, -radius), colour, work.setting().beaten() * placing.scale());
        }
    }

    /** One yarn cut across: as tall as its row, as thick as it is beaten. */
    private void section(double u, double outward, Work work, double tall) {
        double[] at = bend.at(u);
        double nz = Math.sin(at[2]);
        double ny = -Math.cos(at[2]);
        double x = placing.x(at[0] + nz * outward);
        double y = placing.y(at[1] + ny * outward);
        double thick = work.setting().beaten() * placing.scale();
        double high = Math.max(thick, Math.min(tall, work.setting().relaxed()) * placing.scale());
        Color colour = palette.yarn(work.yarn().colour());
        Ellipse2D dot = new Ellipse2D.Double(-thick / 2, -high / 2, thick, high);
        Graphics2D turned = (Graphics2D) g.create();
        turned.translate(x, y);
        turned.rotate((placing.down() ? -1 : 1) * at[2] + Math.PI / 2);
        HemPainting.dot(turned, dot, colour);
        turned.dispose();
    }

    /** The design's first picks, so that the front goes on. */
    private void design(Plan plan, EndPlan end, Hem hem, double last) {
        double from =
                end.place() == Place.START ? hem.cloth() + end.height() - hem.foldLine() : hem.cloth() + hem.foldLine();
        double beaten = plan.piece().stripe(end.place()).beaten();
        double radius = (plan.piece().warpYarn().diameter() + beaten) / 2;
        Color colour = palette.yarn(plan.piece().stripe(end.place()).colour());
        Shed first = end.place() == Place.START
                ? end.after().nextShed()
                : plan.afterDesign().lastShed().orElse(Shed.OVER_FIRST);
        boolean over = first == Shed.OVER_FIRST;
        for (double u = from + beaten / 2; u < last; u += beaten) {
            double[] at = bend.at(u);
            double outward = over ? radius : -radius;
            double thick = beaten * placing.scale();
            Ellipse2D dot = new Ellipse2D.Double(
                    placing.x(at[0] + Math.sin(at[2]) * outward) - thick / 2,
                    placing.y(at[1] - Math.cos(at[2]) * outward) - thick / 2,
                    thick,
                    thick);
            HemPainting.dot(g, dot, Palette.mixed(colour, palette.paper(), 0.3));
            over = !over;
        }
    }
}
