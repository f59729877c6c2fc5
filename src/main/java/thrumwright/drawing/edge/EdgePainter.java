package thrumwright.drawing.edge;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import thrumwright.block.EdgeFinish;
import thrumwright.block.FinishCases;
import thrumwright.block.KnotRows;
import thrumwright.block.TurnedEnds;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/**
 * What becomes of a few warp ends at the edge, hanging down at the start, standing up at the top.
 */
public record EdgePainter(EdgeView view) {
    public void paint(Rectangle2D box, Plan plan, EndPlan end, EdgeFinish finish) {
        Graphics2D g = view.g();
        AffineTransform kept = g.getTransform();
        if (end.place() == Place.TOP) {
            g.translate(0, box.getMinY() + box.getMaxY());
            g.scale(1, -1);
        }
        finish.of(new Painting(box, plan, end)).run();
        g.setTransform(kept);
    }

    /** How each kind is painted. */
    private final class Painting implements FinishCases<Runnable> {
        private final Rectangle2D box;
        private final Plan plan;
        private final EndPlan end;

        Painting(Rectangle2D box, Plan plan, EndPlan end) {
            this.box = box;
            this.plan = plan;
            this.end = end;
        }

        @Override
        public Runnable warpFinish(WarpFinish fringe) {
            if (fringe.kind() == WarpFinish.Kind.DARNED) {
                return () -> new DarnedPainter(view).paint(box, plan, end);
            }
            return () -> new FinishPainter(view).paint(box, plan, end, fringe);
        }

        @Override
        public Runnable knotRows(KnotRows knots) {
            return () -> new KnotRowsPainter(view).paint(box, plan, end, knots);
        }

        @Override
        public Runnable turnedEnds(TurnedEnds turned) {
            return () -> new TurnedEndsPainter(view).paint(box, plan, end, turned);
        }

        @Override
        public Runnable wovenEdge(WovenEdge woven) {
            return () -> new WovenEdgePainter(view).paint(box, plan, end, woven);
        }

        @Override
        public Runnable wrappedTassels(WrappedTassels tassels) {
            return () -> new TasselPainter(view).paint(box, plan, end, tassels);
        }

        @Override
        public Runnable warpLoops(WarpLoops loops) {
            return () -> new LoopsPainter(view).paint(box, plan, end, loops);
        }
    }
}
