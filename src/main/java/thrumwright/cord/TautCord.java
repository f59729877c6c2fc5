package thrumwright.cord;

import java.util.ArrayList;
import java.util.List;

/**
 * A cord pulled taut along a {@link Route}: arcs on the pegs and common tangents between them.
 *
 * <p>The common tangent of two pegs whose middles are c apart is √(c² − (r₁−r₂)²) long where the senses agree and
 * √(c² − (r₁+r₂)²) where they differ (the open and the crossed belt). A peg that the cord would have to be pushed
 * against from the wrong side isn't touched and is left out.
 *
 * @param sections in order; arcs of no length are kept out, but for a cord that stays at one place
 */
public record TautCord(List<PathSection> sections) {
    /** Angles closer than this to nothing or to half a turn are taken for it: rounding, not geometry. */
    private static final double HAIR = 1e-9;

    public TautCord {
        sections = List.copyOf(sections);
    }

    /** The whole length of the middle line, mm, 0 or more. */
    public double length() {
        double sum = 0;
        for (PathSection section : sections) {
            sum += section.length();
        }
        return sum;
    }

    /**
     * Pulls a cord taut along a route.
     *
     * @throws IllegalArgumentException if two neighbours on the route overlap so that no tangent runs between them
     */
    public static TautCord along(Route route) {
        return new TautCord(sections(route, touched(route.visits())));
    }

    private static List<Visit> touched(List<Visit> all) {
        List<Visit> kept = new ArrayList<>(all);
        int i = 1;
        while (i < kept.size() - 1) {
            if (misses(kept.get(i - 1), kept.get(i), kept.get(i + 1))) {
                kept.remove(i);
                i = Math.max(1, i - 1);
            } else {
                i++;
            }
        }
        return kept;
    }

    /** Whether the cord passes a peg by: it would bend the wrong way there, on its way between two others. */
    private static boolean misses(Visit before, Visit peg, Visit after) {
        if (peg.extraTurns() > 0 || before.samePegAs(after)) {
            return false;
        }
        double bend = wrapped(direction(peg, after) - direction(before, peg))
                * peg.sense().sign();
        boolean wrongWay = bend < -HAIR && bend > -Math.PI + HAIR;
        return wrongWay && between(before, peg, after);
    }

    private static boolean between(Visit before, Visit peg, Visit after) {
        double dx = after.x() - before.x();
        double dz = after.z() - before.z();
        double along = (peg.x() - before.x()) * dx + (peg.z() - before.z()) * dz;
        return along > 0 && along < dx * dx + dz * dz;
    }

    private static List<PathSection> sections(Route route, List<Visit> visits) {
        List<PathSection> sections = new ArrayList<>();
        int last = visits.size() - 1;
        for (int i = 0; i <= last; i++) {
            Visit visit = visits.get(i);
            double arrives = i == 0 ? Double.NaN : pointAngle(visit, direction(visits.get(i - 1), visit));
            double leaves = i == last ? Double.NaN : pointAngle(visit, direction(visit, visits.get(i + 1)));
            double from = i == 0 ? route.from().orElse(leaves) : arrives;
            double to = i == last ? route.to().orElse(from) : leaves;
            addArc(sections, visit, from, to);
            if (i < last) {
                sections.add(run(visit, visits.get(i + 1)));
            } else if (sections.isEmpty()) {
                sections.add(new PathSection.Arc(visit.x(), visit.z(), visit.radius(), from, 0));
            }
        }
        return sections;
    }

    private static void addArc(List<PathSection> sections, Visit visit, double arrives, double leaves) {
        double sweep = wrapped(leaves - arrives) * visit.sense().sign();
        if (Math.abs(sweep) < HAIR) {
            sweep = 0;
        } else if (sweep < 0) {
            sweep += 2 * Math.PI;
        }
        double whole = sweep + 2 * Math.PI * visit.extraTurns();
        if (whole > 0) {
            sections.add(new PathSection.Arc(
                    visit.x(),
                    visit.z(),
                    visit.radius(),
                    arrives,
                    whole * visit.sense().sign()));
        }
    }

    private static PathSection run(Visit from, Visit to) {
        double direction = direction(from, to);
        double leaves = pointAngle(from, direction);
        double arrives = pointAngle(to, direction);
        return new PathSection.Run(
                from.x() + from.radius() * Math.cos(leaves),
                from.z() + from.radius() * Math.sin(leaves),
                to.x() + to.radius() * Math.cos(arrives),
                to.z() + to.radius() * Math.sin(arrives));
    }

    /** Where on a peg a cord that runs in a direction touches it: the peg lies to the right when clockwise. */
    private static double pointAngle(Visit visit, double direction) {
        return direction - visit.sense().sign() * Math.PI / 2;
    }

    /** The direction in which the common tangent leaves one peg for another. */
    private static double direction(Visit from, Visit to) {
        double dx = to.x() - from.x();
        double dz = to.z() - from.z();
        double apart = Math.hypot(dx, dz);
        double offset = from.sense().sign() * from.radius() - to.sense().sign() * to.radius();
        if (apart == 0 || Math.abs(offset) > apart * (1 + HAIR)) {
            throw new IllegalArgumentException("two pegs overlap: no cord fits between them");
        }
        return Math.atan2(dz, dx) + Math.asin(Math.max(-1, Math.min(1, offset / apart)));
    }

    /** The same angle in (−π, π]. */
    private static double wrapped(double angle) {
        double turns = Math.IEEEremainder(angle, 2 * Math.PI);
        return turns <= -Math.PI ? turns + 2 * Math.PI : turns;
    }
}
