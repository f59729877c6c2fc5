package thrumwright.drawing.step;

import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.YarnPath;

/**
 * How much of a move's picture changes while yarn is laid in: round the stretches in which its tips move on, and the arrows there.
 *
 * @param row of the picture, from 0
 */
record MovedPart(Move move, Rectangle2D box, int row) {
    /** Round an arrow at a tip, in half widths of its head: its length, its head and its rim. */
    private static final double ROUND_TIP = StepPainter.TIP_LONG + 2;

    /** Round a stretch, in thicknesses of its yarn: half of it, and the line round it. */
    private static final double ROUND_YARN = 0.75;

    /** All of the box where yarn begins or ends, or where the picture begins again. */
    Rectangle2D between(double before, double now) {
        boolean more = before > 0 && before < now && now < 1;
        if (!more || !hung(before).equals(hung(now))) {
            return box;
        }
        View view = StepPainter.moving(box, move);
        double from = share(before);
        double to = share(now);
        Rectangle2D part = null;
        YarnPath path = move.whole().picture().path(Detail.FINE);
        for (List<YarnPath.Reached> strand : path.strands()) {
            for (YarnPath.Reached each : strand) {
                if (each.to() >= from && each.from() <= to) {
                    part = joined(part, round(view, each.stretch()));
                }
            }
        }
        for (double share : new double[] {from, to}) {
            for (YarnPath.Tip tip : path.tips(share)) {
                part = joined(part, round(view, tip));
            }
        }
        return part == null ? box : part.createIntersection(box);
    }

    private List<?> hung(double share) {
        return move.whole().at(row, share).tails();
    }

    private double share(double ofRow) {
        double first = move.share(row);
        return first + (move.share(row + 1) - first) * ofRow;
    }

    private static Rectangle2D joined(Rectangle2D some, Rectangle2D more) {
        return some == null ? more : some.createUnion(more);
    }

    private static Rectangle2D round(View view, Stretch stretch) {
        double out = ROUND_YARN * Arrays.stream(stretch.width()).max().orElse(0);
        double left = view.x(Arrays.stream(stretch.x()).min().orElseThrow() - out);
        double right = view.x(Arrays.stream(stretch.x()).max().orElseThrow() + out);
        double low = view.y(Arrays.stream(stretch.y()).min().orElseThrow() - out);
        double high = view.y(Arrays.stream(stretch.y()).max().orElseThrow() + out);
        return new Rectangle2D.Double(left, high, right - left, low - high);
    }

    private Rectangle2D round(View view, YarnPath.Tip tip) {
        double out =
                ROUND_TIP * view.length(StepPainter.TIP * move.whole().setting().spacing());
        return new Rectangle2D.Double(view.x(tip.x()) - out, view.y(tip.y()) - out, 2 * out, 2 * out);
    }
}
