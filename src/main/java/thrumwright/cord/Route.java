package thrumwright.cord;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The order in which a cord visits pegs.
 *
 * @param visits at least one; neighbours are different pegs (a longer stay on one peg is extra turns)
 * @param from the angle on the first peg at which the cord begins (0 = to the right, π/2 = towards the weaver);
 *     empty: where it leaves that peg
 * @param to the angle on the last peg at which the cord ends; empty: where it arrives
 */
public record Route(List<Visit> visits, OptionalDouble from, OptionalDouble to) {
    /** The angle of the point of a peg that is nearest to the weaver. */
    public static final double FRONT = Math.PI / 2;
    /** The angle of the point of a peg that is farthest from the weaver. */
    public static final double BACK = -Math.PI / 2;

    public Route {
        visits = List.copyOf(visits);
        Objects.requireNonNull(from);
        Objects.requireNonNull(to);
        if (visits.isEmpty()) {
            throw new IllegalArgumentException("a cord visits at least one peg");
        }
        if (visits.size() == 1 && (from.isEmpty() || to.isEmpty())) {
            throw new IllegalArgumentException("on a single peg the cord needs a beginning and an end");
        }
        for (int i = 1; i < visits.size(); i++) {
            if (visits.get(i).samePegAs(visits.get(i - 1))) {
                throw new IllegalArgumentException("a longer stay on one peg is written as extra turns");
            }
        }
    }

    /** The same with its ends fixed: both angles in radians, any. */
    public static Route of(List<Visit> visits, double from, double to) {
        return new Route(visits, OptionalDouble.of(from), OptionalDouble.of(to));
    }
}
