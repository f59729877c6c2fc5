package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Fall;
import thrumwright.block.KnotRows;
import thrumwright.block.Setting;
import thrumwright.block.WarpFinish;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** A few groups of warp ends in rows of knots, each end falling as it does in the whole. */
final class KnotRowsPainter {
    private static final int GROUPS = 4;
    private static final int MOST_IN_GROUP = 6;
    private static final int MOST_ROWS = 4;
    /** Shares of the box: the cloth above the edge, and the margins beside the ends. */
    private static final double CLOTH = 0.2;

    private static final double MARGIN = 0.04;

    private final EdgePen pen;
    private final EdgeView eye;

    KnotRowsPainter(EdgeView eye) {
        this.eye = eye;
        this.pen = new EdgePen(eye.g(), eye.palette());
    }

    /** The first row is knotted as any fringe is. */
    void paint(Rectangle2D box, Plan plan, EndPlan end, KnotRows knots) {
        if (eye.staged() && eye.stage() < EdgeFinish.KNOT_STAGES.size()) {
            WarpFinish first =
                    new WarpFinish(knots.tag(), WarpFinish.Kind.KNOTTED, knots.endsPerGroup(), knots.hanging());
            new FinishPainter(eye).paint(box, plan, end, first);
        } else {
            rows(box, plan, end, eye.staged() ? knots.withRows(Math.min(2, knots.rows())) : knots);
        }
    }

    private void rows(Rectangle2D box, Plan plan, EndPlan end, KnotRows knots) {
        int size = Math.min(knots.endsPerGroup(), MOST_IN_GROUP);
        int ends = GROUPS * size;
        Setting whole = plan.piece().setting(plan.piece().warpYarn());
        double s = whole.spacing();
        double thick = Math.min(whole.warp(), 0.35 * s);
        Setting warp = new Setting(ends, s, thick, thick, thick, Optional.empty());
        double scale = box.getWidth() * (1 - 2 * MARGIN) / (ends * s);
        double left = box.getMinX() + box.getWidth() * MARGIN + scale * s / 2;
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        KnotRows few = fitted(knots, size, warp, (box.getMaxY() - edge) / scale);
        Color colour = eye.palette().yarn(plan.piece().warpYarn().colour());
        double width = thick * scale;
        int number = 0;
        for (Fall fall : few.falls(warp)) {
            // beside each other within the knots
            double aside = (number++ % size - (size - 1) / 2.0) * Math.min(width * 0.5, s * scale * 0.15);
            pen.cord(path(fall, left, edge, scale, aside, few.knotHeight(warp)), width, colour);
        }
        for (int row = 0; row < few.rows(); row++) {
            for (KnotRows.Bunch bunch : few.bunches(ends, row)) {
                double x = bunch.middle(warp);
                double down = few.down(warp, row) + slid(x, few.knotHeight(warp));
                double high = scale * few.knotHeight(warp);
                double top = edge + scale * down - 0.3 * high;
                OverhandKnot.tight(left + scale * x - 0.05 * high, top, 0.36 * high)
                        .draw(pen, colour, top - 0.2 * high, Double.NaN, OverhandKnot.THROUGH);
            }
        }
        pen.cloth(box, edge, left, s * scale, ends, plan, end);
    }

    /** Nothing is closer, mm: lengths have three decimals. */
    private static final double FINEST = 0.001;

    /** So many rows, and so close, that they can be seen in the room there is. */
    private static KnotRows fitted(KnotRows knots, int size, Setting warp, double room) {
        KnotRows few = new KnotRows(knots.tag(), 1, size, knots.split(), knots.apart(), knots.hanging());
        double high = few.knotHeight(warp);
        int fit = (int) Math.max(1, Math.min(MOST_ROWS, (0.85 * room - high) / high + 1));
        int rows = Math.min(knots.rows(), fit);
        double widest = rows < 2 ? high : Math.max(high, (0.75 * room - high) / (rows - 1));
        double step = Math.min(few.step(warp), widest);
        return new KnotRows(
                knots.tag(),
                rows,
                size,
                knots.split(),
                Optional.of(Length.of(Math.max(FINEST, step), Unit.MILLIMETRE)),
                Length.of(1000, Unit.MILLIMETRE));
    }

    /** How much lower a knot is, at x from the left edge end, where knots weren't pushed up to one height. */
    private double slid(double x, double knotHeight) {
        return eye.slipped() ? knotHeight * (0.55 + 0.55 * Math.sin(2.4 * x / knotHeight)) : 0;
    }

    private Path2D path(Fall fall, double left, double edge, double scale, double aside, double knotHeight) {
        List<Fall.Spot> spots = fall.spots();
        Path2D path = new Path2D.Double();
        path.moveTo(left + scale * spots.get(0).x(), edge - 2);
        for (int i = 1; i < spots.size(); i++) {
            double spread = i == spots.size() - 1 ? 4 * aside : aside;
            path.lineTo(
                    left + scale * spots.get(i).x() + spread,
                    edge + scale * (spots.get(i).down() + slid(spots.get(i).x(), knotHeight)));
        }
        return path;
    }
}
