package thrumwright.drawing.edge;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import thrumwright.block.EdgeFinish;
import thrumwright.block.KnotRows;
import thrumwright.block.TurnedEnds;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WrappedTassels;
import thrumwright.drawing.Palette;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** What becomes of a few warp ends at the edge, hanging down at the start, standing up at the top. */
public final class EdgePainter {
    private final Graphics2D g;
    private final Palette palette;
    private final boolean slipped;

    /** @param slipped whether to show what beginners get wrong */
    public EdgePainter(Graphics2D g, Palette palette, boolean slipped) {
        this.slipped = slipped;
        this.g = g;
        this.palette = palette;
    }

    public void paint(Rectangle2D box, Plan plan, EndPlan end, EdgeFinish finish) {
        AffineTransform kept = g.getTransform();
        if (end.place() == Place.TOP) {
            g.translate(0, box.getMinY() + box.getMaxY());
            g.scale(1, -1);
        }
        if (finish instanceof WarpFinish fringe) {
            new FinishPainter(g, palette, slipped).paint(box, plan, end, fringe);
        } else if (finish instanceof KnotRows knots) {
            new KnotRowsPainter(g, palette, slipped).paint(box, plan, end, knots);
        } else if (finish instanceof TurnedEnds turned) {
            new TurnedEndsPainter(g, palette, slipped).paint(box, plan, end, turned);
        } else if (finish instanceof WrappedTassels tassels) {
            new TasselPainter(g, palette, slipped).paint(box, plan, end, tassels);
        } else if (finish instanceof WarpLoops loops) {
            new LoopsPainter(g, palette).paint(box, plan, end, loops);
        }
        g.setTransform(kept);
    }
}
