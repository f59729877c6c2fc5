package thrumwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.differentiation.UnivariateDerivative1;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.hipparchus.util.FastMath;
import thrumwright.block.Leg;
import thrumwright.block.Strand;
import thrumwright.cord.Sense;
import thrumwright.cord.Visit;

/**
 * A yarn's middle line in space, built afresh from the order in which it visits its pegs: helices on the pegs and slanted
 * lines between them. It shares no formula with the peg engine: tangents come from the triangle of the pegs' middles and
 * their homothetic point, and lengths from numerical integration of the speed.
 */
final class MiddleLine {
    /** A bend as large as this is the wrong way round: the cord passes that peg by. */
    private static final double WRONG_WAY = 5.2;

    private final List<Bit> bits = new ArrayList<>();

    /** A part of the line, from 0 to 1, at a place across (x), up (y) and towards the weaver (z). */
    record Bit(Way way, double fromY, double toY) {
        /** {x, y, z} with their speeds. */
        UnivariateDerivative1[] at(double share) {
            UnivariateDerivative1 u = new UnivariateDerivative1(share, 1);
            UnivariateDerivative1[] flat = way.at(u);
            return new UnivariateDerivative1[] {flat[0], u.multiply(toY - fromY).add(fromY), flat[1]};
        }

        double length() {
            return integrated(share -> {
                UnivariateDerivative1[] at = at(share);
                return FastMath.sqrt(square(at[0]) + square(at[1]) + square(at[2]));
            });
        }

        private static double square(UnivariateDerivative1 value) {
            return value.getFirstDerivative() * value.getFirstDerivative();
        }
    }

    /** Seen from above: {x, z} at a share of the way. */
    private interface Way {
        UnivariateDerivative1[] at(UnivariateDerivative1 share);

        default double length() {
            return integrated(share -> {
                UnivariateDerivative1[] at = at(new UnivariateDerivative1(share, 1));
                return FastMath.hypot(at[0].getFirstDerivative(), at[1].getFirstDerivative());
            });
        }

        /** The part from one share to another. */
        default Way part(double from, double to) {
            return share -> at(share.multiply(to - from).add(from));
        }
    }

    private static double integrated(DoubleFunction<Double> speed) {
        return new RombergIntegrator(1e-12, 1e-12, 3, 20).integrate(100_000, speed::apply, 0, 1);
    }

    static MiddleLine of(Strand strand) {
        MiddleLine line = new MiddleLine();
        strand.legs().forEach(line::add);
        return line;
    }

    List<Bit> bits() {
        return bits;
    }

    double length() {
        return bits.stream().mapToDouble(Bit::length).sum();
    }

    private void add(Leg leg) {
        List<Way> ways = ways(leg);
        if (ways.isEmpty()) {
            bits.add(upright(leg));
            return;
        }
        double whole = ways.stream().mapToDouble(Way::length).sum();
        double gone = 0;
        for (Way way : ways) {
            double length = way.length();
            double half = length == 0 ? 1 : (whole / 2 - gone) / length;
            if (half > 1e-9 && half < 1 - 1e-9) {
                add(leg, way.part(0, half), gone / whole, 0.5);
                add(leg, way.part(half, 1), 0.5, (gone + length) / whole);
            } else {
                add(leg, way, whole == 0 ? 0 : gone / whole, whole == 0 ? 1 : (gone + length) / whole);
            }
            gone += length;
        }
    }

    /** It stays on its one peg and goes up or down. */
    private static Bit upright(Leg leg) {
        Visit peg = leg.route().visits().get(0);
        double angle = leg.route().from().orElseThrow();
        double x = peg.x() + peg.radius() * FastMath.cos(angle);
        double z = peg.z() + peg.radius() * FastMath.sin(angle);
        Way still = share -> new UnivariateDerivative1[] {
            share.multiply(0).add(x), share.multiply(0).add(z)
        };
        return new Bit(still, leg.fromY(), leg.toY());
    }

    private void add(Leg leg, Way way, double from, double to) {
        bits.add(new Bit(way, height(leg, from), height(leg, to)));
    }

    private static double height(Leg leg, double share) {
        return share < 0.5
                ? leg.fromY() + 2 * share * (leg.middleY() - leg.fromY())
                : leg.middleY() + (2 * share - 1) * (leg.toY() - leg.middleY());
    }

    private static List<Way> ways(Leg leg) {
        List<Visit> visits = new ArrayList<>(leg.route().visits());
        while (true) {
            List<Way> ways = new ArrayList<>();
            int missed = -1;
            double arrived = leg.route().from().orElse(Double.NaN);
            for (int i = 0; i < visits.size(); i++) {
                Visit peg = visits.get(i);
                boolean last = i == visits.size() - 1;
                double[] tangent = last ? null : tangent(peg, visits.get(i + 1));
                double leaves = last ? leg.route().to().orElse(arrived) : tangent[0];
                double begins = Double.isNaN(arrived) ? leaves : arrived;
                double bend = bend(peg, begins, leaves);
                if (i > 0 && !last && bend > WRONG_WAY && peg.extraTurns() == 0) {
                    missed = i;
                }
                if (bend + peg.extraTurns() > 0) {
                    ways.add(arc(peg, begins, bend + 2 * FastMath.PI * peg.extraTurns()));
                }
                if (!last) {
                    ways.add(run(peg, tangent[0], visits.get(i + 1), tangent[1]));
                    arrived = tangent[1];
                }
            }
            if (missed < 0) {
                return ways;
            }
            visits.remove(missed);
        }
    }

    private static int sign(Visit visit) {
        return visit.sense() == Sense.ANTICLOCKWISE ? 1 : -1;
    }

    /** How far the cord goes round a peg in its sense, 0 to a turn. */
    private static double bend(Visit peg, double from, double to) {
        double bend = sign(peg) * (to - from) % (2 * FastMath.PI);
        double positive = bend < 0 ? bend + 2 * FastMath.PI : bend;
        return positive > 2 * FastMath.PI - 1e-9 || positive < 1e-9 ? 0 : positive;
    }

    /**
     * Where the common tangent touches both pegs, as angles. The radii at the touching points are parallel, and each makes
     * with the line of the middles the angle whose cosine is the (signed) difference of the radii over the distance.
     */
    private static double[] tangent(Visit from, Visit to) {
        double dx = to.x() - from.x();
        double dz = to.z() - from.z();
        double apart = FastMath.hypot(dx, dz);
        double towards = FastMath.atan2(dz, dx);
        boolean outer = from.sense() == to.sense();
        double other = outer ? to.radius() : -to.radius();
        double angle = FastMath.acos(FastMath.max(-1, FastMath.min(1, (from.radius() - other) / apart)));
        double leaves = towards - sign(from) * angle;
        return new double[] {leaves, outer ? leaves : leaves + FastMath.PI};
    }

    private static Way arc(Visit peg, double from, double bend) {
        return share -> {
            UnivariateDerivative1 angle = share.multiply(sign(peg) * bend).add(from);
            return new UnivariateDerivative1[] {
                angle.cos().multiply(peg.radius()).add(peg.x()),
                angle.sin().multiply(peg.radius()).add(peg.z())
            };
        };
    }

    private static Way run(Visit from, double leaves, Visit to, double arrives) {
        double x = from.x() + from.radius() * FastMath.cos(leaves);
        double z = from.z() + from.radius() * FastMath.sin(leaves);
        double toX = to.x() + to.radius() * FastMath.cos(arrives);
        double toZ = to.z() + to.radius() * FastMath.sin(arrives);
        return share -> new UnivariateDerivative1[] {
            share.multiply(toX - x).add(x), share.multiply(toZ - z).add(z)
        };
    }
}
