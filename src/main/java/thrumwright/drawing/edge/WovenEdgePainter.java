package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.Strand;
import thrumwright.block.WovenEdge;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Legs;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.Stretches;
import thrumwright.drawing.yarn.WarpPen;
import thrumwright.drawing.yarn.YarnPen;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** A few warp ends of a woven edge: the first of them woven through their neighbours, the others still hanging. */
final class WovenEdgePainter {
    /** Ends that are shown beyond those that the first is woven through. */
    private static final int MORE = 4;
    /** Which of them is left hanging where one is forgotten, in the order of working. */
    private static final int LEFT = 1;
    /** Share of the box above the edge. */
    private static final double CLOTH = 0.25;
    /** Thickness as a share of the distance between ends at least, so that over and under can be told apart. */
    private static final double THINNEST = 0.32;

    private static final double THICKEST = 0.4;

    private final EdgePen pen;
    private final EdgeView eye;

    WovenEdgePainter(EdgeView eye) {
        this.eye = eye;
        this.pen = new EdgePen(eye.g(), eye.palette());
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end, WovenEdge woven) {
        int ends = woven.through() + MORE;
        Setting whole = plan.piece().setting(plan.piece().warpYarn());
        double s = whole.spacing();
        double thick = Math.max(THINNEST * s, Math.min(THICKEST * s, whole.warp()));
        Setting warp = new Setting(ends, s, thick, thick, thick, Optional.empty());
        double scale = box.getWidth() / ((ends + 0.6) * s);
        double left = box.getCenterX() - scale * warp.span() / 2;
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        View view = new View(scale, left, edge + scale * woven.height(warp));
        pen.cloth(box, edge, left, s * scale, ends, plan, end);
        Scene scene = new Scene(
                view,
                warp,
                woven,
                eye.palette().yarn(plan.piece().warpYarn().colour()),
                plan.piece().warpYarn().plies(),
                view.clothY(box.getMaxY()) - 1);
        if (eye.staged() && eye.stage() < 2) {
            first(box, scene);
            return;
        }
        woven(scene, MORE);
        if (eye.staged()) {
            StrandWay.along(eye.hand(box), view, warp, strands(scene).get(MORE).legs(), eye.stage() + 1);
        }
    }

    /** What all that is painted has in common; {@code low} is how far down ends hang, mm. */
    private record Scene(View view, Setting warp, WovenEdge woven, Color colour, int plies, double low) {}

    private static List<Strand> strands(Scene in) {
        return in.woven().strands(in.warp());
    }

    private void woven(Scene in, int done) {
        List<Strand> through = new ArrayList<>(strands(in).subList(0, done));
        if (eye.slipped()) {
            through.remove(LEFT);
        }
        between(in, through, done);
    }

    /** Strands in front of the ends that still stand and behind them. */
    private void between(Scene in, List<Strand> through, int done) {
        List<Stretch> all = Stretches.of(in.warp(), through, false, Detail.FINE);
        Color dark = Palette.mixed(in.colour(), Color.BLACK, 0.35);
        YarnPen.inTheShade(eye.g(), in.view(), dark, in.plies(), Face.FRONT)
                .drawInOrder(all.stream().filter(stretch -> !stretch.front()).toList());
        standing(in, done);
        new YarnPen(eye.g(), in.view(), in.colour(), in.plies(), Face.FRONT)
                .drawInOrder(all.stream().filter(Stretch::front).toList());
    }

    /** A woven end stands down to where it bends, all others hang. */
    private void standing(Scene in, int done) {
        Setting warp = in.warp();
        double from = in.woven().height(warp);
        boolean rightward = in.woven().from() == Side.LEFT;
        WarpPen standing = new WarpPen(eye.g(), in.view(), in.colour(), in.plies(), Face.FRONT);
        for (int i = 0; i < warp.ends(); i++) {
            int place = rightward ? i : warp.ends() - 1 - i;
            boolean hangs = i >= done || eye.slipped() && i == LEFT;
            double bends =
                    strands(in).get(Math.min(i, warp.ends() - 2)).legs().get(0).fromY();
            standing.draw(warp.spacing(), warp.warp(), place, place, hangs ? in.low() : bends, from);
        }
    }

    /** The first end on its way: across its neighbours, and then to the back. */
    private void first(Rectangle2D box, Scene in) {
        List<Leg> legs = strands(in).get(0).legs();
        if (eye.stage() == 0) {
            List<Leg> held = new ArrayList<>(legs.subList(0, in.woven().through()));
            held.add(Legs.toHand(
                    held.get(held.size() - 1),
                    in.warp(),
                    in.woven().from() == Side.LEFT,
                    -0.8 * in.warp().spacing()));
            between(in, List.of(new Strand(held)), 1);
            StrandWay.along(
                    eye.hand(box),
                    in.view(),
                    in.warp(),
                    legs.subList(0, in.woven().through()),
                    1);
        } else {
            between(in, List.of(new Strand(legs)), 1);
            StrandWay.along(eye.hand(box), in.view(), in.warp(), legs.subList(legs.size() - 1, legs.size()), 2);
        }
    }
}
