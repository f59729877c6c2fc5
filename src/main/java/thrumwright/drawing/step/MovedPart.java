package thrumwright.drawing.step;

import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.YarnPath;

/**
 * How much of a scene's picture changes while its yarn is laid in: round the stretches in which its tips move on, and the
 * arrows there.
 *
 * @param view how the scene lies in the box
 * @param drawn where a stretch is drawn
 * @param arrows whether there is one at each tip
 */
record MovedPart(Rectangle2D box, View view, StepScene whole, UnaryOperator<Stretch> drawn, boolean arrows) {
    /** Round an arrow at a tip, in half widths of its head: its length, its head and its rim. */
    private static final double ROUND_TIP = StepPainter.TIP_LONG + 2;

    /** Round a stretch, in thicknesses of its yarn: half of it, and the line round it. */
    private static final double ROUND_YARN = 0.75;

    /**
     * All of the box where a yarn begins or ends, or where the picture begins again.
     *
     * @param from share of the scene's yarn that was laid in, 0 to 1
     * @param to share that is laid in now
     */
    Rectangle2D between(double from, double to) {
        boolean more = from > 0 && from < to && to < 1;
        if (!more || !hung(from).equals(hung(to))) {
            return box;
        }
        Rectangle2D part = null;
        YarnPath path = whole.picture().path(Detail.FINE);
        for (List<YarnPath.Reached> strand : path.strands()) {
            for (YarnPath.Reached each : strand) {
                if (each.to() >= from && each.from() <= to) {
                    part = joined(part, round(drawn.apply(each.stretch())));
                }
            }
        }
        for (double share : arrows ? new double[] {from, to} : new double[0]) {
            for (YarnPath.Tip tip : path.tips(share)) {
                part = joined(part, round(tip));
            }
        }
        return part == null ? box : part.createIntersection(box);
    }

    private List<?> hung(double share) {
        return whole.laid(share).tails();
    }

    private static Rectangle2D joined(Rectangle2D some, Rectangle2D more) {
        return some == null ? more : some.createUnion(more);
    }

    private Rectangle2D round(Stretch stretch) {
        double out = ROUND_YARN * Arrays.stream(stretch.width()).max().orElse(0);
        double left = view.x(Arrays.stream(stretch.x()).min().orElseThrow() - out);
        double right = view.x(Arrays.stream(stretch.x()).max().orElseThrow() + out);
        double low = view.y(Arrays.stream(stretch.y()).min().orElseThrow() - out);
        double high = view.y(Arrays.stream(stretch.y()).max().orElseThrow() + out);
        return new Rectangle2D.Double(left, high, right - left, low - high);
    }

    private Rectangle2D round(YarnPath.Tip tip) {
        double out = ROUND_TIP * view.length(StepPainter.TIP * whole.setting().spacing());
        return new Rectangle2D.Double(view.x(tip.x()) - out, view.y(tip.y()) - out, 2 * out, 2 * out);
    }
}
