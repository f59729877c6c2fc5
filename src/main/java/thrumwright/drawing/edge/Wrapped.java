package thrumwright.drawing.edge;

import java.awt.Color;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.block.Strand;
import thrumwright.block.WrappedTassels;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.Stretches;
import thrumwright.drawing.yarn.YarnPen;

/**
 * The wrapping of one tassel as it runs round its bundle.
 *
 * @param view with x = 0 in the middle of the bundle and y = 0 at the wrapping's lower line, mm
 * @param few the wrapping yarn on the tassel's ends
 */
record Wrapped(View view, Setting few, WrappedTassels tassels, Color colour, int plies) {
    double high() {
        return tassels.turns() * few.beaten();
    }

    /** Half as wide as bundle and wrapping together, mm. */
    double half() {
        return tassels.widest(few) / 2 + few.beaten();
    }

    /** So many turns between two heights, mm. */
    List<Stretch> turns(int count, double low, double high) {
        WrappedTassels shown = tassels.withTurns(Math.max(1, count));
        // far from a second end, so that nothing squeezes the turns
        Setting alone =
                new Setting(2, few.spacing() * 1e3, shown.widest(few), few.relaxed(), few.beaten(), Optional.empty());
        double by = (high - low) / shown.wrapped(few);
        Strand between = new Strand(shown.strand(few).legs().stream()
                .map(leg ->
                        new Leg(leg.route(), low + leg.fromY() * by, low + leg.middleY() * by, low + leg.toY() * by))
                .toList());
        return Stretches.of(alone, List.of(between), false, Detail.FINE);
    }

    YarnPen behind(EdgeView eye) {
        return YarnPen.inTheShade(eye.g(), view, Palette.mixed(colour, Color.BLACK, 0.4), plies, Face.FRONT);
    }

    YarnPen inFront(EdgeView eye) {
        return new YarnPen(eye.g(), view, colour, plies, Face.FRONT);
    }
}
