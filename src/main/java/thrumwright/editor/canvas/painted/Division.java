package thrumwright.editor.canvas.painted;

import java.util.ArrayList;
import java.util.List;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;

/**
 * How a rule is divided, so that its strokes can be told apart and its numbers don't touch.
 *
 * @param small from one stroke to the next, mm
 * @param large from one number to the next, mm; a multiple of the small one
 */
public record Division(double small, double large, Shown shown) {
    private static final double[] METRIC = {1, 5, 10, 50, 100, 500, 1000, 5000};
    private static final double[] INCHES = {
        25.4 / 16, 25.4 / 8, 25.4 / 4, 25.4 / 2, 25.4, 2 * 25.4, 6 * 25.4, 12 * 25.4, 36 * 25.4
    };
    private static final double CLOSEST = 6;

    /**
     * A stroke.
     *
     * @param at mm from where the rule begins
     * @param number empty if it has none
     */
    public record Stroke(double at, String number) {
        public boolean numbered() {
            return !number.isEmpty();
        }
    }

    /** The longest text of a height or depth up to so many mm, with its unit. */
    static String widest(Shown shown, double most) {
        if (shown.system() == UnitSystem.INCHES) {
            return (most < 10 * 25.4 ? "0" : "00") + "¹⁵⁄₁₆ in";
        }
        return (most < 100 ? "0" : most < 1000 ? "00" : "000") + ".0 cm";
    }

    /**
     * The finest division that can be read.
     *
     * @param scale pixels per mm, more than 0
     * @param room pixels that a number needs, more than 0
     */
    public static Division of(double scale, double room, Shown shown) {
        double[] steps = shown.system() == UnitSystem.INCHES ? INCHES : METRIC;
        double small = first(steps, CLOSEST / scale);
        double large = first(steps, Math.max(small, room / scale));
        return new Division(small, large, shown);
    }

    private static double first(double[] steps, double least) {
        for (double step : steps) {
            if (step >= least - 1e-9) {
                return step;
            }
        }
        return steps[steps.length - 1];
    }

    /** All strokes from one place to another, mm from where the rule begins. */
    public List<Stroke> between(double from, double to) {
        List<Stroke> strokes = new ArrayList<>();
        for (long i = (long) Math.ceil(from / small - 1e-9); i * small <= to + 1e-9; i++) {
            double at = i * small;
            boolean numbered = Math.abs(at / large - Math.rint(at / large)) < 1e-6;
            strokes.add(new Stroke(at, numbered ? number(at) : ""));
        }
        return strokes;
    }

    /** A height without its unit. */
    static String number(String height) {
        return height.substring(0, height.lastIndexOf(' '));
    }

    /** In centimetres or inches, without the unit. */
    private String number(double mm) {
        if (shown.system() == UnitSystem.INCHES) {
            return number(shown.height(mm));
        }
        return shown.decimals(mm / 10, 1);
    }
}
