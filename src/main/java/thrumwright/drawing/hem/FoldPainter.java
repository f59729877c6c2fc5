package thrumwright.drawing.hem;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Dimension;
import thrumwright.drawing.Palette;
import thrumwright.piece.Place;
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

    public FoldPainter(Graphics2D g, Palette palette) {
        this.g = g;
        this.palette = palette;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** A hem folded, to scale, in the middle of a box; with its depth dimensioned where a font is given. */
    public void paint(Rectangle2D box, Plan plan, EndPlan end, Hem hem, Font font) {
        HemLine bend = HemLine.flat(hem);
        double thick = hem.stacked()
                + hem.sleeve().map(sleeve -> sleeve.support().thick()).orElse(0.0) * 0.2;
        double scale = Math.min(
                box.getHeight() * 0.9 / (shownFront(hem) + 2 * hem.thickness()), box.getWidth() * 0.45 / thick);
        boolean down = end.place() == Place.START;
        double edge = down ? box.getMaxY() - box.getHeight() * 0.05 : box.getMinY() + box.getHeight() * 0.05;
        double foldY = edge + (down ? -1 : 1) * bend.outside() * scale;
        HemPlacing placing = new HemPlacing(scale, box.getCenterX(), foldY, down);
        folded(placing, bend, plan, end, hem);
        dimension(placing, bend, hem, font, plan.piece().shown().height(hem.depth()));
    }

    /** How much of the front is shown beyond the fold, mm. */
    static double shownFront(Hem hem) {
        return hem.depth() * 1.15 + 1;
    }

    /** All that belongs to the hem: cloth, band, seam, and what it takes. */
    void folded(HemPlacing placing, HemLine bend, Plan plan, EndPlan end, Hem hem) {
        new HemCloth(g, palette, placing, bend).draw(plan, end, hem, shownFront(hem));
        new HemFittings(g, palette, placing, bend).draw(plan, hem);
    }

    /** The depth, from the turned edge to the hem's inner edge. */
    private void dimension(HemPlacing placing, HemLine bend, Hem hem, Font font, String depth) {
        double x = placing.x(hem.thickness() / 2) + 8;
        double from = placing.y(-bend.outside());
        double to = placing.y(hem.depth() - bend.outside());
        new Dimension(g, palette.ink(), font).upright(x, from, to, depth);
    }
}
