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
import thrumwright.block.TurnedEnds;
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

/**
 * A few warp ends being turned: the first of them done, the others still hanging. In two directions the first row is
 * done, and the second under way.
 */
final class TurnedEndsPainter {
    private static final int ENDS = 6;
    /** Which of them is left hanging where one is forgotten, in the order of working. */
    private static final int LEFT = 1;
    /** Share of the box above the edge. */
    private static final double CLOTH = 0.3;
    /** Thicknesses as shares of the distance between ends, so that over and under can be told apart. */
    private static final double THINNEST = 0.32;

    private static final double THICKEST = 0.4;

    private final EdgePen pen;
    private final EdgeView eye;

    TurnedEndsPainter(EdgeView eye) {
        this.eye = eye;
        this.pen = new EdgePen(eye.g(), eye.palette());
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end, TurnedEnds turned) {
        Setting whole = plan.piece().setting(plan.piece().warpYarn());
        double s = whole.spacing();
        double thick = Math.max(THINNEST * s, Math.min(THICKEST * s, whole.warp()));
        Setting warp = new Setting(ENDS, s, thick, thick, thick, Optional.empty());
        double scale = box.getWidth() / ((ENDS + 0.6) * s);
        double left = box.getCenterX() - scale * warp.span() / 2;
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        View view = new View(scale, left, edge + scale * turned.height(warp));
        Color colour = eye.palette().yarn(plan.piece().warpYarn().colour());
        pen.cloth(box, edge, left, s * scale, ENDS, plan, end);
        int last = eye.staged() && eye.stage() < 3 ? 0 : turned.rows() - 1;
        Scene scene = new Scene(
                view, warp, turned, colour, plan.piece().warpYarn().plies(), view.clothY(box.getMaxY()) - 1, last);
        if (eye.staged() && eye.stage() < 2) {
            first(box, scene);
            return;
        }
        int done = turned.bothWays() ? ENDS / 2 : ENDS / 2 + 1;
        for (int row = 0; row < last; row++) {
            row(scene, row, row == 0 ? ENDS : 0);
        }
        row(scene, last, done);
        if (eye.staged()) {
            Strand next = turned.strands(warp, last).get(done);
            StrandWay.along(eye.hand(box), view, warp, next.legs(), eye.stage() + 1);
        }
    }

    /** All that the rows have in common; {@code low} is how far down ends hang, mm. */
    private record Scene(View view, Setting warp, TurnedEnds turned, Color colour, int plies, double low, int last) {
        boolean lastRow(int row) {
            return row == last;
        }
    }

    /** The ends that turn in a row, so many of them done, on the ends that still stand. */
    private void row(Scene in, int row, int done) {
        List<Strand> strands = in.turned().strands(in.warp(), row);
        List<Strand> turning = new ArrayList<>(strands.subList(0, Math.min(done, strands.size())));
        if (eye.slipped() && in.lastRow(row)) {
            turning.remove(LEFT);
        }
        List<Stretch> all = Stretches.of(in.warp(), turning, false, Detail.FINE);
        if (in.turned().fringe() && row == in.turned().rows() - 1) {
            shade(in)
                    .drawTogether(
                            turning.stream().map(strand -> hanging(in, strand)).toList());
        }
        shade(in).drawInOrder(all.stream().filter(stretch -> !stretch.front()).toList());
        standing(in, row, done);
        light(in).drawInOrder(all.stream().filter(Stretch::front).toList());
    }

    /** Where an end comes to the back it hangs down again. */
    private static Stretch hanging(Scene in, Strand strand) {
        Leg last = strand.legs().get(strand.legs().size() - 1);
        double x = last.route().visits().get(last.route().visits().size() - 1).x();
        double y = last.toY();
        return Stretch.loose(
                new double[] {x, x, x},
                new double[] {y, (y + in.low()) / 2, in.low()},
                in.warp().warp());
    }

    private void standing(Scene in, int row, int done) {
        Setting warp = in.warp();
        TurnedEnds turned = in.turned();
        boolean rightward = (row == 0 ? turned.from() : turned.from().other()) == Side.LEFT;
        double from = turned.height(warp) - 2 * row * warp.beaten();
        WarpPen standing = new WarpPen(eye.g(), in.view(), in.colour(), in.plies(), Face.FRONT);
        for (int i = 0; i < warp.ends(); i++) {
            int place = rightward ? i : warp.ends() - 1 - i;
            boolean hangs = in.lastRow(row) && (i >= done || left(i));
            // the outermost end has no neighbour before it that goes round it, nor has the one after an end that was
            // left
            boolean alone = i == 0 || left(i - 1);
            double bends = from - (alone ? 0.5 : 1.6) * warp.beaten();
            double goesOn = hangs ? in.low() : from - 2 * warp.beaten();
            double to = in.lastRow(row) && !hangs ? bends : goesOn;
            standing.draw(warp.spacing(), warp.warp(), place, place, to, from);
        }
    }

    private boolean left(int end) {
        return eye.slipped() && end == LEFT;
    }

    /** The first end on its way: behind its neighbours, and then round them. */
    private void first(Rectangle2D box, Scene in) {
        Setting warp = in.warp();
        boolean rightward = in.turned().from() == Side.LEFT;
        List<Leg> legs = in.turned().strands(warp, 0).get(0).legs().subList(0, eye.stage() + 1);
        List<Leg> held = new ArrayList<>(legs);
        held.add(Legs.toHand(legs.get(eye.stage()), warp, rightward, -0.8 * warp.spacing()));
        List<Stretch> all = Stretches.of(warp, List.of(new Strand(held)), false, Detail.FINE);
        shade(in).drawInOrder(all.stream().filter(stretch -> !stretch.front()).toList());
        standing(in, 0, 1);
        light(in).drawInOrder(all.stream().filter(Stretch::front).toList());
        StrandWay.along(eye.hand(box), in.view(), warp, legs.subList(eye.stage(), eye.stage() + 1), eye.stage() + 1);
    }

    private YarnPen shade(Scene in) {
        Color dark = Palette.mixed(in.colour(), Color.BLACK, 0.35);
        return YarnPen.inTheShade(eye.g(), in.view(), dark, in.plies(), Face.FRONT);
    }

    private YarnPen light(Scene in) {
        return new YarnPen(eye.g(), in.view(), in.colour(), in.plies(), Face.FRONT);
    }
}
