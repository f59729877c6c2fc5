package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thrumwright.cord.Route;
import thrumwright.cord.Sense;
import thrumwright.cord.Visit;

/**
 * Builds routes for a row that runs one way. Ends are counted in the direction of travel, so that one description serves
 * both directions.
 */
record Way(Setting setting, boolean rightward) {
    static Way of(Setting setting, Row row) {
        return new Way(setting, row.from() == Side.LEFT);
    }

    /** A warp end, counted from 0 in the direction of travel, passed in front or behind. */
    Visit end(int index, boolean over, double radius) {
        return Visit.of(x(index), radius, sense(over));
    }

    Visit end(int index, boolean over) {
        return end(index, over, setting.radius());
    }

    double x(int index) {
        return (rightward ? index : setting.ends() - 1 - index) * setting.spacing();
    }

    /** The end counted from the left. */
    int fromLeft(int index) {
        return rightward ? index : setting.ends() - 1 - index;
    }

    Sense sense(boolean over) {
        return over == rightward ? Sense.CLOCKWISE : Sense.ANTICLOCKWISE;
    }

    static double top(boolean over) {
        return over ? Route.FRONT : Route.BACK;
    }

    /** A straight float in front or behind, from one end to a later one. */
    Route flat(int from, int to, boolean over) {
        return Route.of(List.of(end(from, over), end(to, over)), top(over), top(over));
    }

    /** From an end on one side to the next on the other. */
    Route crossing(int from, boolean fromOver) {
        double radius = setting.weavingRadius();
        return Route.of(
                List.of(end(from, fromOver, radius), end(from + 1, !fromOver, radius)), top(fromOver), top(!fromOver));
    }

    /** Plain weave over the whole width. */
    List<Visit> plain(Shed shed) {
        List<Visit> visits = new ArrayList<>(setting.ends());
        for (int i = 0; i < setting.ends(); i++) {
            visits.add(end(i, shed.over(fromLeft(i)), setting.weavingRadius()));
        }
        return visits;
    }

    /** Half way round the last end, from its front to its back or the other way. */
    Route turn(boolean fromFront) {
        Sense sense = fromFront == rightward ? Sense.CLOCKWISE : Sense.ANTICLOCKWISE;
        Visit last = Visit.of(x(setting.ends() - 1), setting.radius(), sense);
        return Route.of(List.of(last), top(fromFront), top(!fromFront));
    }

    /** Half way round the outermost end, from its front to its back: where a yarn is folded. */
    Route fold() {
        Sense sense = rightward ? Sense.ANTICLOCKWISE : Sense.CLOCKWISE;
        return Route.of(List.of(Visit.of(x(0), setting.radius(), sense)), Route.FRONT, Route.BACK);
    }

    /** Forward in front to {@code head}, back behind to {@code foot}, and up to the front there. */
    Route wrap(int head, int foot) {
        if (head == foot) {
            return loop(head);
        }
        return Route.of(List.of(end(head, true), end(foot, true)), Route.FRONT, Route.FRONT);
    }

    /** Once round all ends from {@code foot} to {@code head}, beginning and ending in front of the head. */
    Route loop(int head, int foot) {
        if (head == foot) {
            return loop(head);
        }
        return Route.of(List.of(end(head, true), end(foot, true), end(head, true)), Route.FRONT, Route.FRONT);
    }

    private Route loop(int end) {
        return round(end, true);
    }

    /** Once round an end, beginning and ending in front of it or behind it. */
    Route round(int end, boolean over) {
        Visit once = new Visit(x(end), 0, setting.radius(), sense(over), 1);
        return Route.of(List.of(once), top(over), top(over));
    }

    /** The post beyond the last end ({@code ahead}) or before the first; passed like an end on that side. */
    Visit post(Posts posts, double radius, boolean ahead, boolean over) {
        double away = posts.gap() + (setting.warp() + posts.diameter()) / 2;
        boolean right = ahead == rightward;
        double x = right ? setting.span() + away : -away;
        return Visit.of(x, radius, sense(over));
    }

    /** The outermost point of the post on that side. */
    double outermost(boolean ahead) {
        return ahead == rightward ? 0 : Math.PI;
    }

    static OptionalDouble angle(boolean present, double angle) {
        return present ? OptionalDouble.of(angle) : OptionalDouble.empty();
    }
}
