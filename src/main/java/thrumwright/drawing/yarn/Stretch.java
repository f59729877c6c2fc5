package thrumwright.drawing.yarn;

import java.util.Arrays;

/**
 * A piece of yarn that lies wholly in front of the warp or wholly behind it, seen from the front.
 *
 * @param front whether it lies in front
 * @param order where along its yarn it lies, 0 to 1: what is worked later lies on top
 * @param length of the yarn in it, mm, by the engine that measures the whole strand
 * @param joinsAtStart whether it begins flush, where another piece of the yarn goes on, and not with a round end
 * @param joinsAtEnd the same of its end
 * @param x across the width, mm
 * @param y up the warp from the block's lower edge, mm
 * @param width how thick the yarn shows there, mm
 * @param lift how far it stands out from the plane of the warp, from 0 in the gap to 1 on top of an end
 */
public record Stretch(
        boolean front,
        double order,
        double length,
        boolean joinsAtStart,
        boolean joinsAtEnd,
        double[] x,
        double[] y,
        double[] width,
        double[] lift) {
    /**
     * A piece that no strand gave, standing out all along: a tail or a tie, whose beginning shows no round end.
     *
     * @param thickness mm, 0 or more
     */
    public static Stretch loose(double[] x, double[] y, double thickness) {
        double[] width = new double[x.length];
        double[] lift = new double[x.length];
        Arrays.fill(width, thickness);
        Arrays.fill(lift, 1);
        return new Stretch(true, 0, 0, true, false, x, y, width, lift);
    }

    /**
     * Its beginning, with a round end where it breaks off.
     *
     * @param share of its line as it is seen, more than 0, less than 1
     */
    Stretch first(double share) {
        double rest = share * seen();
        int i = 1;
        while (i < x.length - 1 && rest > apart(i)) {
            rest -= apart(i);
            i++;
        }
        double part = Math.min(1, rest / Math.max(1e-9, apart(i)));
        return new Stretch(
                front,
                order,
                length * share,
                joinsAtStart,
                false,
                cut(x, i, part),
                cut(y, i, part),
                cut(width, i, part),
                cut(lift, i, part));
    }

    /** How long its line is seen, mm, 0 or more. */
    private double seen() {
        double sum = 0;
        for (int i = 1; i < x.length; i++) {
            sum += apart(i);
        }
        return sum;
    }

    private double apart(int i) {
        return Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
    }

    /** The values before a point and one on the way to it. */
    private static double[] cut(double[] values, int point, double part) {
        double[] cut = Arrays.copyOf(values, point + 1);
        cut[point] = values[point - 1] + (values[point] - values[point - 1]) * part;
        return cut;
    }

    /** Whether no strand gave it. */
    public boolean loose() {
        return length == 0;
    }

    /** The least x of its middle line: mm from the first warp end, either sign. */
    public double lowX() {
        return least(x);
    }

    /** The greatest x of its middle line: mm from the first warp end, either sign. */
    public double highX() {
        return greatest(x);
    }

    /** The least height of its middle line: mm, either sign. */
    public double lowestY() {
        return lowY();
    }

    double lowY() {
        return least(y);
    }

    double highY() {
        return greatest(y);
    }

    double thickest() {
        return greatest(width);
    }

    private static double least(double[] values) {
        double least = values[0];
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    private static double greatest(double[] values) {
        double greatest = values[0];
        for (double value : values) {
            greatest = Math.max(greatest, value);
        }
        return greatest;
    }
}
