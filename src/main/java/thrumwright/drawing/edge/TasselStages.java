package thrumwright.drawing.edge;

import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.drawing.HandWay;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Stretch;

/**
 * How a tassel is wrapped: the yarn laid along it as a loop, wrapped over from the cloth outwards, its end put through the bend
 * and drawn under by the short tail. All in mm from the middle of the wrapping's lower line.
 */
record TasselStages(EdgeView eye, Wrapped wrapped) {
    private static final int LAID = 0;
    private static final int WRAPPING = 1;
    private static final int THROUGH = 2;

    private double high() {
        return wrapped.high();
    }

    private double thick() {
        return wrapped.few().relaxed();
    }

    /** How far the bend stands out below the wrapping; drawn half way under, it is gone. */
    private double bend() {
        return -2.6 * thick();
    }

    /** How far the bend is open each way. */
    private double open() {
        return 0.9 * thick();
    }

    /** The turns that are made, from the cloth outwards. */
    List<Stretch> turns() {
        int all = wrapped.tassels().turns();
        int half = (all + 1) / 2;
        return switch (eye.stage()) {
            case LAID -> List.of();
            case WRAPPING -> wrapped.turns(half, high() * (1 - half / (double) all), high());
            default -> wrapped.turns(all, 0, high());
        };
    }

    /** What lies on the tassel, under the turns. */
    void loop() {
        if (eye.stage() <= THROUGH) {
            wrapped.inFront(eye).drawTogether(List.of(bent()));
        } else {
            wrapped.inFront(eye).drawTogether(List.of(shortTail()));
        }
    }

    /** From the short tail beside the cloth along the tassel, round the bend, and up to where the wrapping begins. */
    private Stretch bent() {
        double top = high() + 1.5 * thick();
        double out = wrapped.half() + 2 * thick();
        double[] x = {-out, -open() - 0.4 * thick(), -open(), -open(), -0.7 * open(), 0, 0.7 * open(), open(), open()};
        double[] y = {
            top, top - 0.8 * thick(), high(), 0, bend() + 0.4 * open(), bend(), bend() + 0.4 * open(), 0, high()
        };
        return Stretch.loose(x, y, thick());
    }

    private Stretch shortTail() {
        double top = high() + 1.5 * thick();
        double out = wrapped.half() + 2 * thick();
        return Stretch.loose(
                new double[] {-open(), -open() - 0.4 * thick(), -out},
                new double[] {high(), top - 0.8 * thick(), top},
                thick());
    }

    /** What lies on top of all: the long end on its way. */
    void onTop() {
        double side = wrapped.half();
        double t = thick();
        if (eye.stage() == LAID) {
            hand(
                    new double[] {open(), side, 4 * side},
                    new double[] {high() - 0.3 * t, high() + 0.2 * t, high() + 0.4 * side});
        } else if (eye.stage() == WRAPPING) {
            double low = turns().stream().mapToDouble(Stretch::lowestY).min().orElse(0);
            hand(new double[] {side - 0.6 * t, 1.6 * side, 4 * side}, new double[] {low, low - 0.2 * side, low});
        } else if (eye.stage() == THROUGH) {
            hand(
                    new double[] {0.8 * side, side, 0.9 * side, 0.5 * open(), -2.4 * side},
                    new double[] {0, -t, bend(), bend() + 1.1 * t, bend() - t});
        }
    }

    private void hand(double[] x, double[] y) {
        wrapped.inFront(eye).drawTogether(List.of(Stretch.loose(x, y, thick())));
    }

    /** The hand's way in this stage. */
    void ways(Rectangle2D box) {
        HandWay hand = eye.hand(box);
        View view = wrapped.view();
        double side = wrapped.half();
        double t = thick();
        switch (eye.stage()) {
            case LAID -> straight(hand, -side - 0.8 * t, 0.7 * high(), -side - 0.8 * t, bend());
            case WRAPPING -> TwistWay.across(hand, view.x(0), view.y(0.25 * high()), view.length(1.7 * side), 1, 2);
            case THROUGH -> straight(hand, 3 * side, bend() + 1.2 * t, -1.2 * side, bend() - 0.2 * t);
            default -> straight(hand, -side - 2.5 * t, high() + t, -3.6 * side, high() + 2.2 * t);
        }
    }

    private void straight(HandWay hand, double fromX, double fromY, double toX, double toY) {
        View view = wrapped.view();
        hand.straight(view.x(fromX), view.y(fromY), view.x(toX), view.y(toY), eye.stage() + 1);
    }
}
