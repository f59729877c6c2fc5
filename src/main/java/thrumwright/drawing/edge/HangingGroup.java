package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import thrumwright.block.FinishCases;
import thrumwright.block.KnotRows;
import thrumwright.block.Setting;
import thrumwright.block.TurnedEnds;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.plan.Finish;

/**
 * Draws the first group of warp ends as it will hang: knotted, plied, plaited or wrapped. The others keep their braces, so
 * that what is woven there until the piece comes off the loom can still be seen.
 *
 * @param warp the colour of the warp
 * @param wrapping the colour of what wraps tassels
 */
public record HangingGroup(Graphics2D g, Palette palette, View view, Setting ground, Color warp, Color wrapping) {
    /** Ends that stand closer than that, page units, aren't told apart. */
    private static final double SINGLE_FROM = 3;

    /** How far it hangs, in widths of the group, and at most in mm; a long fringe isn't drawn to its tips. */
    private static final double LONG = 1.6;

    private static final double LONGEST = 16;

    /** Where the knot is, as a share of what hangs. */
    private static final double KNOT = 0.14;

    /** Where a wrapping ends. */
    private static final double WRAPPED = 0.5;

    /**
     * @param edge where the cloth ends that stays, mm above the end's lowest line
     * @param outward the way from the cloth to the loose ends: −1 down, +1 up
     */
    public void draw(Finish finish, double edge, int outward) {
        if (view.length(ground.spacing()) < SINGLE_FROM) {
            return;
        }
        AffineTransform before = g.getTransform();
        double line = view.y(edge);
        if (outward > 0) {
            g.translate(0, 2 * line);
            g.scale(1, -1);
        }
        if (!finish.groups().isEmpty()) {
            finish.block().of(new Works()).accept(group(finish.groups().get(0), line));
        }
        g.setTransform(before);
    }

    private FringeGroup group(int size, double line) {
        double down = view.length(Math.min(LONGEST, LONG * size * ground.spacing()));
        return new FringeGroup(
                g,
                new EdgePen(g, palette),
                warp,
                new FringeGroup.Hanging(
                        view.x(0), view.length(ground.spacing()), size, line, line + KNOT * down, line + down));
    }

    private void tassel(FringeGroup group) {
        FringeGroup.Hanging at = group.at();
        double low = at.edge() + WRAPPED * (at.bottom() - at.edge());
        double wide = OverhandKnot.bundle(at.size(), at.thick());
        group.gather(at.knot());
        group.spread(at.middle(), low, at.tip(), 1);
        g.setColor(wrapping);
        g.fill(new Rectangle2D.Double(at.middle() - wide / 2, at.knot(), wide, low - at.knot()));
        g.setColor(Palette.mixed(wrapping, Color.BLACK, 0.4));
        for (double y = at.knot(); y <= low; y += Math.max(2, at.thick())) {
            g.draw(new Line2D.Double(at.middle() - wide / 2, y, at.middle() + wide / 2, y));
        }
    }

    /** What is done with a group. */
    private final class Works implements FinishCases<Consumer<FringeGroup>> {
        @Override
        public Consumer<FringeGroup> warpFinish(WarpFinish fringe) {
            return switch (fringe.kind()) {
                case KNOTTED -> FringeGroup::knotted;
                case PLIED -> group -> group.corded(2);
                case PLAITED -> group -> group.corded(3);
                case DARNED -> group -> {};
            };
        }

        @Override
        public Consumer<FringeGroup> knotRows(KnotRows knots) {
            return FringeGroup::knotted;
        }

        @Override
        public Consumer<FringeGroup> turnedEnds(TurnedEnds turned) {
            return group -> {};
        }

        @Override
        public Consumer<FringeGroup> wovenEdge(WovenEdge woven) {
            return group -> {};
        }

        @Override
        public Consumer<FringeGroup> wrappedTassels(WrappedTassels tassels) {
            return HangingGroup.this::tassel;
        }

        @Override
        public Consumer<FringeGroup> warpLoops(WarpLoops loops) {
            return group -> {};
        }
    }
}
