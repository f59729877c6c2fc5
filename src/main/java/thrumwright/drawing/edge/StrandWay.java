package thrumwright.drawing.edge;

import java.util.List;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.block.Strand;
import thrumwright.drawing.HandWay;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.Stretches;

/** The hand's way along legs of a strand. */
public final class StrandWay {
    private StrandWay() {}

    /** @param number of the stage */
    public static void along(HandWay hand, View view, Setting setting, List<Leg> legs, int number) {
        List<Stretch> parts = Stretches.of(setting, List.of(new Strand(legs)), false, Detail.FINE);
        hand.along(parts.stream().map(part -> part(view, part)).toList(), number);
    }

    private static HandWay.Bit part(View view, Stretch stretch) {
        int points = stretch.x().length;
        double[] x = new double[points];
        double[] y = new double[points];
        for (int i = 0; i < points; i++) {
            x[i] = view.x(stretch.x()[i]);
            y[i] = view.y(stretch.y()[i]);
        }
        return new HandWay.Bit(x, y, !stretch.front());
    }
}
