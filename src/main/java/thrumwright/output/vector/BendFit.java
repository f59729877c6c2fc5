package thrumwright.output.vector;

import java.util.List;
import java.util.Optional;

/**
 * One curve that comes as near as can be to several that follow each other smoothly: Schneider, An Algorithm for
 * Automatically Fitting Digitized Curves, in Graphics Gems (1990), from memory.
 */
final class BendFit {
    /** So many points of each curve are held against the one. */
    private static final int POINTS = 4;

    private static final int ROUNDS = 4;

    private final Bend first;
    private final double[] leaves;
    private final double[] arrives;
    private final double[] x;
    private final double[] y;
    private final double[] t;
    private final int last;

    private BendFit(List<Bend> bends) {
        first = bends.get(0);
        leaves = first.leaves();
        arrives = bends.get(bends.size() - 1).arrives();
        last = bends.size() * POINTS;
        x = new double[last + 1];
        y = new double[last + 1];
        t = new double[last + 1];
        x[0] = first.x(0);
        y[0] = first.y(0);
        for (int i = 1; i <= last; i++) {
            Bend on = bends.get((i - 1) / POINTS);
            double share = ((i - 1) % POINTS + 1) / (double) POINTS;
            x[i] = on.x(share);
            y[i] = on.y(share);
            t[i] = t[i - 1] + Bend.far(x[i] - x[i - 1], y[i] - y[i - 1]);
        }
        for (int i = 1; i <= last; i++) {
            t[i] = t[last] == 0 ? 0 : t[i] / t[last];
        }
    }

    /** The one curve, if nobody can tell it from the several. */
    static Optional<Bend> of(List<Bend> bends, double unseen) {
        BendFit fit = new BendFit(bends);
        for (int round = 0; round < ROUNDS; round++) {
            Optional<Bend> one = fit.nearest();
            if (one.isEmpty() || fit.farthest(one.get()) <= unseen) {
                return one;
            }
            fit.again(one.get());
        }
        return Optional.empty();
    }

    /** The one with the least squares of distances; none if it would turn back. */
    private Optional<Bend> nearest() {
        double c00 = 0;
        double c01 = 0;
        double c11 = 0;
        double x0 = 0;
        double x1 = 0;
        double across = leaves[0] * -arrives[0] + leaves[1] * -arrives[1];
        for (int i = 0; i <= last; i++) {
            double s = 1 - t[i];
            double b1 = 3 * s * s * t[i];
            double b2 = 3 * s * t[i] * t[i];
            double begin = s * s * s + b1;
            double end = t[i] * t[i] * t[i] + b2;
            double offX = x[i] - begin * x[0] - end * x[last];
            double offY = y[i] - begin * y[0] - end * y[last];
            c00 += b1 * b1;
            c01 += b1 * b2 * across;
            c11 += b2 * b2;
            x0 += b1 * (leaves[0] * offX + leaves[1] * offY);
            x1 -= b2 * (arrives[0] * offX + arrives[1] * offY);
        }
        double whole = c00 * c11 - c01 * c01;
        double out = (x0 * c11 - x1 * c01) / whole;
        double in = (c00 * x1 - c01 * x0) / whole;
        return out > 0 && in > 0 ? Optional.of(led(out, in)) : Optional.empty();
    }

    private Bend led(double out, double in) {
        return new Bend(new double[] {
            x[0],
            y[0],
            x[0] + out * leaves[0],
            y[0] + out * leaves[1],
            x[last] - in * arrives[0],
            y[last] - in * arrives[1],
            x[last],
            y[last]
        });
    }

    private double farthest(Bend one) {
        double farthest = 0;
        for (int i = 0; i <= last; i++) {
            farthest = Math.max(farthest, Bend.far(one.x(t[i]) - x[i], one.y(t[i]) - y[i]));
        }
        return farthest;
    }

    private void again(Bend one) {
        for (int i = 1; i < last; i++) {
            t[i] = one.nearer(t[i], x[i], y[i]);
        }
    }
}
