package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.Setting;
import thrumwright.drawing.HandWay;
import thrumwright.drawing.Needle;
import thrumwright.drawing.PictureLabels;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.WarpPen;
import thrumwright.drawing.yarn.YarnPen;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/**
 * Warp ends darned back, seen from behind: each lies in the cloth close beside its neighbour and goes as that does, over and
 * under the same picks, until it comes out and is trimmed. The picks are drawn apart, so that it can be seen.
 */
final class DarnedPainter {
    private static final int ENDS = 5;
    /** Which of them is under way, counted as they are seen from behind, from the left; those before it are done. */
    private static final int NOW = 2;
    /** Share of the box: the cloth. */
    private static final double CLOTH = 0.66;

    /** Of the distance between ends: a warp end's thickness, the yarn's, and how far beside its neighbour an end lies. */
    private static final double WARP = 0.16;

    private static final double YARN = 0.26;
    private static final double BESIDE = 0.2;
    /** From one pick to the next, in thicknesses of the yarn. */
    private static final double APART = 1.1;
    /** Of the cloth that is seen: how far an end lies back, and how far one that is under way has come. */
    private static final double BACK = 0.72;

    private static final double HALF_WAY = 0.4;

    private final EdgeView eye;

    DarnedPainter(EdgeView eye) {
        this.eye = eye;
    }

    /** All in page units, y up from the edge. */
    private record Scene(View view, Setting setting, Color warp, int plies, double high, double low) {
        double x(int end) {
            return end * setting.spacing();
        }
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end) {
        Scene scene = scene(box, plan.piece().warpYarn());
        cloth(scene, plan, end);
        label(box);
        if (eye.staged()) {
            way(box, scene);
        }
    }

    private Scene scene(Rectangle2D box, Yarn warp) {
        double pitch = box.getWidth() / (ENDS + 0.4);
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        double yarn = Math.min(YARN * pitch, 0.1 * box.getHeight());
        Setting setting = new Setting(ENDS, pitch, WARP * pitch, yarn, APART * yarn, Optional.empty());
        View view = new View(1, box.getMinX() + 0.7 * pitch, edge);
        Color colour = eye.palette().yarn(warp.colour());
        return new Scene(view, setting, colour, warp.plies(), edge - box.getMinY(), edge - box.getMaxY());
    }

    private void label(Rectangle2D box) {
        if (eye.font() != null) {
            String back = eye.labels().back();
            double size = eye.font().getSize2D();
            double x = box.getMaxX() - (PictureLabels.width(back, eye.font()) + size) / 2;
            PictureLabels.draw(eye.g(), eye.palette(), eye.font(), back, x, box.getMaxY() - size);
        }
    }

    private void cloth(Scene in, Plan plan, EndPlan end) {
        Yarn yarn = plan.piece().stripe(end.place());
        int picks = (int) Math.ceil(in.high() / in.setting().beaten()) + 1;
        BlockPicture band = BlockPicture.picks(yarn, in.setting(), picks, Course.beginning());
        ClothPainter painter = new ClothPainter(eye.g(), eye.palette(), true, Face.FRONT);
        painter.behind(in.view(), band).drawTogether(band.back(Detail.FINE));
        WarpPen standing = new WarpPen(eye.g(), in.view(), in.warp(), in.plies(), Face.FRONT);
        for (int i = 0; i < ENDS; i++) {
            double low = i < turned() ? 0 : i == NOW ? hangsTo(in) : in.low();
            standing.draw(in.setting().spacing(), in.setting().warp(), i, i, low, in.high());
        }
        within(in);
        painter.inFront(in.view(), band).drawTogether(band.front(Detail.FINE));
        beyond(in);
    }

    /** How many turn back at the edge. */
    private int turned() {
        return !eye.staged() ? ENDS : eye.stage() == 0 ? NOW : NOW + 1;
    }

    /** One that is held in the hand, with its needle. */
    private static double hangsTo(Scene in) {
        return 0.35 * in.low();
    }

    private int done() {
        return eye.staged() ? NOW : ENDS;
    }

    /** What lies in the cloth. */
    private void within(Scene in) {
        List<Stretch> ends = new ArrayList<>();
        for (int end = 0; end < done(); end++) {
            ends.add(beside(in, end, BACK * in.high()));
        }
        if (eye.stage() == 1) {
            ends.add(beside(in, NOW, HALF_WAY * in.high()));
        } else if (eye.stage() == 2) {
            ends.add(beside(in, NOW, BACK * in.high()));
        }
        pen(in).drawTogether(ends);
    }

    /** Up beside its neighbour, from the edge. */
    private static Stretch beside(Scene in, int end, double to) {
        double x = places(in, end);
        return Stretch.loose(
                new double[] {x, x, x},
                new double[] {0, to / 2, to},
                in.setting().warp());
    }

    /** Towards the next end; the last one towards the one before it. */
    private static double places(Scene in, int end) {
        boolean last = end == ENDS - 1;
        double s = in.setting().spacing();
        return in.x(last ? end - 1 : end + 1) + (last ? BESIDE : -BESIDE) * s;
    }

    /** What is outside: the turns at the edge, tips that were trimmed, and the needle. */
    private void beyond(Scene in) {
        List<Stretch> outside = new ArrayList<>();
        for (int end = 0; end < turned(); end++) {
            outside.add(turn(in, end));
            if (end < done() || eye.stage() == 2) {
                outside.add(tip(in, end));
            }
        }
        pen(in).drawTogether(outside);
        if (eye.stage() == 0) {
            needle(in, in.x(NOW), 1.35 * hangsTo(in));
        } else if (eye.stage() == 1) {
            needle(in, places(in, NOW), (HALF_WAY + 0.3) * in.high());
        }
    }

    /** From its own place back up beside its neighbour. */
    private static Stretch turn(Scene in, int end) {
        double from = in.x(end);
        double to = places(in, end);
        double down = -0.45 * in.setting().spacing();
        double middle = (from + to) / 2;
        return Stretch.loose(
                new double[] {from, from + 0.06 * (to - from), middle, to - 0.06 * (to - from), to},
                new double[] {0.1 * in.high(), 0.6 * down, down, 0.6 * down, 0},
                in.setting().warp());
    }

    /** Where it comes out and is trimmed. */
    private static Stretch tip(Scene in, int end) {
        double x = places(in, end);
        double y = BACK * in.high();
        double out = 0.6 * in.setting().relaxed();
        return Stretch.loose(
                new double[] {x, x, x},
                new double[] {y - out, y, y + out},
                in.setting().warp());
    }

    private void needle(Scene in, double x, double tip) {
        View view = in.view();
        double length = 0.3 * in.high();
        boolean up = tip > 0;
        double y = view.y(up ? tip : tip - length);
        new Needle(eye.g(), eye.palette())
                .draw(view.x(x), y, length, 1.15 * in.setting().warp(), up ? -Math.PI / 2 : Math.PI / 2);
    }

    private void way(Rectangle2D box, Scene in) {
        View view = in.view();
        HandWay hand = eye.hand(box);
        double aside = 0.35 * in.setting().spacing();
        double x = view.x(in.x(NOW));
        double there = view.x(places(in, NOW));
        if (eye.stage() == 0) {
            hand.straight(x + aside, view.y(0.75 * in.low()), x + aside, view.y(0.1 * in.low()), 1);
        } else if (eye.stage() == 1) {
            hand.straight(there - aside, view.y(0.1 * in.high()), there - aside, view.y(0.6 * in.high()), 2);
        } else {
            hand.straight(there - aside, view.y(0.45 * in.high()), there - 0.3 * aside, view.y(BACK * in.high()), 3);
        }
    }

    private YarnPen pen(Scene in) {
        return new YarnPen(eye.g(), in.view(), in.warp(), in.plies(), Face.FRONT);
    }
}
