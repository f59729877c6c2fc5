package thrumwright.drawing.yarn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import thrumwright.drawing.View;

/**
 * The middle line of a stretch of yarn on the page.
 *
 * @param x page units
 * @param y page units
 * @param width how thick the yarn shows there, page units
 * @param lift from 0 in the gap to 1 on top of an end
 * @param nx unit normals to the left of the way
 * @param thickest the greatest width
 */
record Spine(
        Stretch stretch,
        double[] x,
        double[] y,
        double[] width,
        double[] lift,
        double[] nx,
        double[] ny,
        double thickest) {
    /** Points nearer to an end than this share of the thickness would only turn the round end aside. */
    private static final double NEAR_END = 0.35;

    static Spine of(View view, Stretch stretch) {
        int[] kept = kept(stretch);
        int n = kept.length;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] width = new double[n];
        boolean all = n == stretch.x().length;
        double[] lift = all ? stretch.lift() : new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = view.x(stretch.x()[kept[i]]);
            y[i] = view.y(stretch.y()[kept[i]]);
            width[i] = view.length(stretch.width()[kept[i]]);
            lift[i] = stretch.lift()[kept[i]];
        }
        double[] nx = new double[n];
        double[] ny = new double[n];
        normals(x, y, nx, ny);
        return new Spine(stretch, x, y, width, lift, nx, ny, view.length(stretch.thickest()));
    }

    private static int[] kept(Stretch stretch) {
        int last = stretch.x().length - 1;
        double near = NEAR_END * stretch.thickest();
        int[] kept = new int[last + 1];
        int count = 0;
        for (int i = 0; i <= last; i++) {
            if (i == 0 || i == last || apart(stretch, i, 0) > near && apart(stretch, i, last) > near) {
                kept[count++] = i;
            }
        }
        return count == kept.length ? kept : Arrays.copyOf(kept, count);
    }

    private static double apart(Stretch stretch, int a, int b) {
        double dx = stretch.x()[a] - stretch.x()[b];
        double dy = stretch.y()[a] - stretch.y()[b];
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** Where a yarn turns away from the eye, the normals nearby serve. */
    private static void normals(double[] x, double[] y, double[] nx, double[] ny) {
        double fx = 1;
        double fy = 0;
        for (int i = 0; i < x.length; i++) {
            int from = Math.max(0, i - 1);
            int to = Math.min(x.length - 1, i + 1);
            double dx = x[to] - x[from];
            double dy = y[to] - y[from];
            double length = Math.sqrt(dx * dx + dy * dy);
            if (length > 1e-6) {
                fx = dx / length;
                fy = dy / length;
            }
            nx[i] = fy;
            ny[i] = -fx;
        }
    }

    /** The part of the line that lies higher than that, as {x, y}; empty if nothing does. */
    double[][] lit(double above) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            if (i > 0 && (lift[i] >= above) != (lift[i - 1] >= above)) {
                double share = (above - lift[i - 1]) / (lift[i] - lift[i - 1]);
                points.add(new double[] {x[i - 1] + (x[i] - x[i - 1]) * share, y[i - 1] + (y[i] - y[i - 1]) * share});
            }
            if (lift[i] >= above) {
                points.add(new double[] {x[i], y[i]});
            }
        }
        return points.toArray(new double[0][]);
    }

    int last() {
        return x.length - 1;
    }
}
