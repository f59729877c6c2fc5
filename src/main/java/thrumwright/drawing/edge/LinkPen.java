package thrumwright.drawing.edge;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.YarnPen;
import thrumwright.piece.Place;

/** Draws loops of a closed warp that hang in the loops of another warp, which leads on to the loom's bar. */
record LinkPen(LoopPen loops) {
    /** How far the other warp is shown, in thicknesses of the warp. */
    private static final double FAR = 5.5;

    /** @param place of the end: it says which ends make a loop */
    void draw(Place place) {
        double d = loops.warp().warp();
        List<Stretch> bends = new ArrayList<>();
        List<Stretch> behind = new ArrayList<>();
        List<Stretch> inFront = new ArrayList<>();
        for (int end = loops.firstSeen(); end <= loops.lastSeen(); end++) {
            double x = end * loops.warp().spacing();
            boolean second = end % 2 == (place == Place.START ? 1 : 0);
            if (second && end + 1 < loops.warp().ends()) {
                bends.add(loops.roundNail(end, d));
                double middle = x + loops.warp().spacing() / 2;
                behind.add(leg(middle, -d));
                inFront.add(leg(middle, d));
            } else if (second || end == 0) {
                bends.add(loops.line(new double[] {x, x, x}, new double[] {0, d, 3 * d}));
            }
        }
        Color other = Palette.mixed(loops.palette().yarn(loops.yarn().colour()), Color.BLACK, 0.4);
        YarnPen linked =
                new YarnPen(loops.g(), loops.view(), other, loops.yarn().plies(), loops.face());
        linked.drawTogether(behind);
        new YarnPen(
                        loops.g(),
                        loops.view(),
                        loops.palette().yarn(loops.yarn().colour()),
                        loops.yarn().plies(),
                        loops.face())
                .drawTogether(bends);
        linked.drawTogether(inFront);
    }

    /** From the inside of a loop outwards: one leg behind its bend, the other in front. */
    private Stretch leg(double middle, double aside) {
        double d = loops.warp().warp();
        return loops.line(
                new double[] {middle, middle + 0.7 * aside, middle + aside, middle + aside},
                new double[] {0.35 * d, 0.6 * d, 1.3 * d, FAR * d});
    }
}
