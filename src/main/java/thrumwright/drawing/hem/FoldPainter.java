package thrumwright.drawing.hem;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import thrumwright.drawing.Palette;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;

/**
 * The hem from the side, cut along the first warp end: the warp as a line, yarns as sections at their true size, the hem
 * turned back at its true thickness. The front of the cloth is to the right.
 */
public final class FoldPainter {
    /** From a bar that isn't in the hem to the hem, at least, page units. */
    static final double GAP = 14;

    private final Graphics2D g;
    private final Palette palette;

    FoldPainter(Graphics2D g, Palette palette) {
        this.g = g;
        this.palette = palette;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** How much of the front is shown beyond the fold, mm. */
    static double shownFront(Hem hem) {
        return hem.depth() * 1.15 + 1;
    }

    /** All that belongs to the hem: cloth, band, seam, and what it takes. */
    void folded(HemPlacing placing, HemLine bend, Plan plan, EndPlan end, Hem hem) {
        cloth(placing, bend, plan, end, hem);
        new HemFittings(g, palette, placing, bend).draw(plan, hem);
    }

    /** Cloth, and band or seam, without what it takes. */
    void sewn(HemPlacing placing, HemLine bend, Plan plan, EndPlan end, Hem hem) {
        cloth(placing, bend, plan, end, hem);
        new HemFittings(g, palette, placing, bend).sewn(plan, hem);
    }

    /** The cloth alone. */
    void cloth(HemPlacing placing, HemLine bend, Plan plan, EndPlan end, Hem hem) {
        new HemCloth(g, palette, placing, bend).draw(plan, end, hem, shownFront(hem));
    }
}
