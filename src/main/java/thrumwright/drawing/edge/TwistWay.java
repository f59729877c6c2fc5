package thrumwright.drawing.edge;

import java.util.List;
import thrumwright.drawing.HandWay;

/** The hand's way where it turns something about itself: across its front, with both ends bent behind it. */
final class TwistWay {
    private static final int POINTS = 13;

    private TwistWay() {}

    /**
     * @param wide half the way across, page units
     * @param way 1 to the right in front, −1 to the left
     */
    static void across(HandWay hand, double x, double y, double wide, int way, int number) {
        double[] xs = new double[POINTS];
        double[] ys = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double angle = Math.PI * (1.12 - 1.24 * i / (POINTS - 1));
            xs[i] = x + way * wide * Math.cos(angle);
            ys[i] = y + 0.6 * wide * Math.sin(angle);
        }
        hand.along(List.of(new HandWay.Bit(xs, ys, false)), number);
    }
}
