package thrumwright.drawing.yarn;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.cord.PathSection;
import thrumwright.cord.Route;
import thrumwright.cord.Sense;
import thrumwright.cord.TautCord;
import thrumwright.cord.Visit;

/** Legs of a strand as they are while it is worked: divided, not yet drawn tight, going on to the hand. */
public final class Legs {
    private Legs() {}

    /** A leg divided where it passes each warp end; together they run as the whole. */
    public static List<Leg> atEnds(Leg leg, boolean rightward) {
        List<Visit> visits = leg.route().visits();
        List<Leg> legs = new ArrayList<>();
        for (int i = 1; i < visits.size(); i++) {
            OptionalDouble from = i == 1 ? leg.route().from() : OptionalDouble.of(top(visits.get(i - 1), rightward));
            OptionalDouble to =
                    i == visits.size() - 1 ? leg.route().to() : OptionalDouble.of(top(visits.get(i), rightward));
            legs.add(new Leg(new Route(visits.subList(i - 1, i + 1), from, to), leg.fromY(), leg.middleY(), leg.toY()));
        }
        return legs;
    }

    /** Where a cord that runs one way is farthest from the plane of the warp: in front, or behind. */
    private static double top(Visit visit, boolean rightward) {
        return (visit.sense() == Sense.CLOCKWISE) == rightward ? Route.FRONT : Route.BACK;
    }

    /** The same legs laid in as an arc so high in its middle, mm, 0 or more. */
    public static List<Leg> arched(List<Leg> legs, double high) {
        List<Leg> arched = new ArrayList<>();
        int all = legs.size();
        for (int i = 0; i < all; i++) {
            Leg leg = legs.get(i);
            arched.add(new Leg(
                    leg.route(),
                    leg.fromY() + high * Math.sin(Math.PI * i / all),
                    leg.middleY() + high * Math.sin(Math.PI * (i + 0.5) / all),
                    leg.toY() + high * Math.sin(Math.PI * (i + 1) / all)));
        }
        return arched;
    }

    /** Of a leg that goes round some ends and over them again: once round them, before it is drawn tight, coming down so far, mm, 0 or more. */
    public static Leg roundOnce(Leg loop, double down) {
        List<Visit> visits = loop.route().visits();
        Route once = visits.size() == 1 ? loop.route() : Route.of(visits.subList(0, 2), Route.FRONT, Route.FRONT);
        double y = (loop.fromY() + loop.toY()) / 2;
        return new Leg(once, y + down, y + down / 2, y);
    }

    /** The same level leg, rising so far, mm, any. */
    public static Leg rising(Leg level, double up) {
        return new Leg(level.route(), level.fromY(), level.fromY() + up / 2, level.fromY() + up);
    }

    /** From the end of a leg straight on, in front or behind as it ended, to the hand beyond the last warp end; rising so far, mm, any. */
    public static Leg toHand(Leg last, Setting setting, boolean rightward, double rise) {
        List<PathSection> sections = TautCord.along(last.route()).sections();
        PathSection.Spot spot = sections.get(sections.size() - 1).at(1);
        return toHand(spot.x(), spot.z() >= 0, setting, rightward, last.toY(), rise);
    }

    /** The beginning of a straight way to the hand: so far, mm, more than 0. */
    public static Leg firstOf(Leg toHand, double far, boolean rightward) {
        Visit from = toHand.route().visits().get(0);
        double share = far / Math.abs(toHand.route().visits().get(1).x() - from.x());
        Visit to = Visit.of(from.x() + (rightward ? far : -far), from.radius(), from.sense());
        return new Leg(
                new Route(
                        List.of(from, to), toHand.route().from(), toHand.route().to()),
                toHand.fromY(),
                toHand.fromY() + share * (toHand.toY() - toHand.fromY()) / 2,
                toHand.fromY() + share * (toHand.toY() - toHand.fromY()));
    }

    /** From a warp end at x straight on, in front or behind; all in mm, any. */
    public static Leg toHand(double x, boolean front, Setting setting, boolean rightward, double y, double rise) {
        Sense sense = front == rightward ? Sense.CLOCKWISE : Sense.ANTICLOCKWISE;
        double far = rightward ? setting.span() + 4 * setting.spacing() : -4 * setting.spacing();
        double top = front ? Route.FRONT : Route.BACK;
        List<Visit> visits = List.of(Visit.of(x, setting.radius(), sense), Visit.of(far, setting.radius(), sense));
        return new Leg(Route.of(visits, top, top), y, y + rise / 2, y + rise);
    }
}
