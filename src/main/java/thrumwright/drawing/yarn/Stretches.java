package thrumwright.drawing.yarn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.block.Strand;
import thrumwright.cord.PathSection;
import thrumwright.cord.TautCord;

/**
 * Cuts a block's strands where they pass the plane of the warp, from front to back or the other way. Nothing is added
 * and nothing lost: all stretches together are as long as the strands.
 */
public final class Stretches {
    private static final double ARC_STEP = Math.PI / 9;
    private static final int RUN_STEPS = 3;
    /** How much a point's height over the warp counts beside its place, in diameters: light depends on it, no outline. */
    private static final double LIFT = 0.3;
    /**
     * A yarn that runs on level from under the wraps it has just made lies under so many legs before it.
     */
    private static final int TUCKED_UNDER = 3;
    /** Distances below this are rounding, mm. */
    private static final double HAIR = 1e-6;

    private final Setting setting;
    private final boolean tailed;
    private final Detail detail;
    private final List<Stretch> done = new ArrayList<>();
    private final List<double[]> current = new ArrayList<>();
    private boolean front;
    private double order;
    private double length;
    private boolean tucked;
    private double reached;
    private boolean begins;

    private Stretches(Setting setting, boolean tailed, Detail detail) {
        this.setting = setting;
        this.tailed = tailed;
        this.detail = detail;
    }

    /**
     * All stretches, those that lie on top last.
     *
     * @param tailed whether tails are to be drawn where strands end at an edge
     */
    public static List<Stretch> of(Setting setting, List<Strand> strands, boolean tailed, Detail detail) {
        Stretches stretches = new Stretches(setting, tailed, detail);
        for (Strand strand : strands) {
            stretches.add(strand);
        }
        stretches.done.sort(Comparator.comparingDouble(Stretch::order));
        return List.copyOf(stretches.done);
    }

    /** The stretches of one strand as they are laid in, one after the other. */
    static List<Stretch> asLaid(Setting setting, Strand strand, boolean tailed, Detail detail) {
        Stretches stretches = new Stretches(setting, tailed, detail);
        stretches.add(strand);
        return List.copyOf(stretches.done);
    }

    private void add(Strand strand) {
        int legs = strand.legs().size();
        begins = true;
        for (int i = 0; i < legs; i++) {
            Leg leg = strand.legs().get(i);
            boolean jumps = i > 0 && Math.abs(leg.fromY() - reached) > HAIR;
            boolean runsOn = jumps && leg.fromY() == leg.toY();
            if (runsOn || tucked) {
                finish(false);
            }
            tucked = runsOn;
            add(leg, (double) (tucked ? i - TUCKED_UNDER : i) / legs, 1.0 / legs);
            reached = leg.toY();
        }
        finish(true);
        tucked = false;
    }

    private void add(Leg leg, double begun, double share) {
        TautCord cord = TautCord.along(leg.route());
        Climb climb = new Climb(leg, cord.length());
        if (climb.whole() == 0) {
            upright(leg, cord.sections().get(0), begun);
            return;
        }
        double gone = 0;
        for (PathSection section : cord.sections()) {
            List<Double> cuts = cuts(section);
            for (int i = 1; i < cuts.size(); i++) {
                double from = cuts.get(i - 1);
                double to = cuts.get(i);
                side(section, from, to);
                double end = gone + section.length() * to;
                order = begun + share * end / climb.whole();
                sample(section, from, to, gone, climb);
                length += climb.length(gone + section.length() * from, end);
            }
            gone += section.length();
        }
    }

    /** A leg that goes straight up or down where it is. */
    private void upright(Leg leg, PathSection place, double begun) {
        side(place, 0, 0);
        order = begun;
        add(place.at(0), leg.fromY());
        add(place.at(0), leg.toY());
        length += Math.abs(leg.toY() - leg.fromY());
    }

    /** Where along a section it begins, passes the plane of the warp, and ends. */
    private static List<Double> cuts(PathSection section) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        if (section instanceof PathSection.Run run && run.fromZ() * run.toZ() < 0) {
            cuts.add(run.fromZ() / (run.fromZ() - run.toZ()));
        } else if (section instanceof PathSection.Arc arc && Math.abs(arc.z()) < arc.radius()) {
            double dip = Math.asin(-arc.z() / arc.radius());
            crossings(arc, dip, cuts);
            crossings(arc, Math.PI - dip, cuts);
        }
        cuts.sort(Comparator.naturalOrder());
        return cuts;
    }

    private static void crossings(PathSection.Arc arc, double angle, List<Double> cuts) {
        double turn = 2 * Math.PI / Math.abs(arc.sweep());
        double first = (angle - arc.start()) / arc.sweep();
        double least = first - Math.floor(first / turn) * turn;
        int turns = (int) Math.ceil((1 - least) / turn);
        for (int i = 0; i <= turns; i++) {
            double share = least + i * turn;
            if (share > 1e-9 && share < 1 - 1e-9) {
                cuts.add(share);
            }
        }
    }

    /** Begins anew where the yarn changes sides. */
    private void side(PathSection section, double from, double to) {
        double middle = section.at((from + to) / 2).z();
        boolean nowFront = Math.abs(middle) < HAIR ? front : middle > 0;
        if (nowFront != front) {
            finish(false);
            front = nowFront;
        }
    }

    private void sample(PathSection section, double from, double to, double gone, Climb climb) {
        int steps = section instanceof PathSection.Arc arc
                ? (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) * (to - from) / ARC_STEP))
                : RUN_STEPS;
        for (int step = 0; step <= steps; step++) {
            double share = from + (to - from) * step / steps;
            PathSection.Spot spot = section.at(share);
            add(spot, climb.height(gone + section.length() * share));
        }
    }

    private void add(PathSection.Spot spot, double y) {
        double raised = Math.min(1, Math.abs(spot.z()) / setting.radius());
        boolean squeezed = spot.x() > 0 && spot.x() < setting.span();
        double width = squeezed ? width(raised) : setting.relaxed();
        double[] point = {spot.x(), y, width, raised * LIFT * setting.relaxed()};
        if (current.isEmpty() || apart(current.get(current.size() - 1), point) > HAIR) {
            current.add(point);
        }
    }

    /** @param ends whether the strand ends there */
    private void finish(boolean ends) {
        if (current.size() > 1) {
            List<double[]> kept = Thinned.of(current, detail.unseen() * setting.relaxed());
            boolean joinsAtStart = begins && goesOn(kept.get(0), kept.get(1));
            boolean joinsAtEnd = ends && goesOn(kept.get(kept.size() - 1), kept.get(kept.size() - 2));
            done.add(new Stretch(
                    front,
                    order,
                    length,
                    joinsAtStart,
                    joinsAtEnd,
                    row(kept, 0),
                    row(kept, 1),
                    row(kept, 2),
                    lifts(kept)));
            begins = false;
        }
        length = 0;
        current.clear();
    }

    /** Whether a tail goes on straight from a strand's end: it lies on an outermost warp end, and level. */
    private boolean goesOn(double[] end, double[] before) {
        double fromEdge = Math.min(Math.abs(end[0]), Math.abs(end[0] - setting.span()));
        boolean level = Math.abs(end[1] - before[1]) < 0.2 * Math.abs(end[0] - before[0]);
        return tailed && level && fromEdge < setting.radius() / 2;
    }

    private double[] lifts(List<double[]> points) {
        return points.stream()
                .mapToDouble(point -> point[3] / (LIFT * setting.relaxed()))
                .toArray();
    }

    private static double[] row(List<double[]> points, int index) {
        return points.stream().mapToDouble(point -> point[index]).toArray();
    }

    private static double apart(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]) + Math.abs(a[2] - b[2]) + Math.abs(a[3] - b[3]);
    }

    /** On the face a float swells to its relaxed diameter; in the gap between two ends it is squeezed. */
    private double width(double raised) {
        double eased = raised * raised * (3 - 2 * raised);
        return setting.beaten() + (setting.relaxed() - setting.beaten()) * eased;
    }

    /**
     * How a leg climbs.
     *
     * @param whole its length seen from above, mm, more than 0
     */
    private record Climb(Leg leg, double whole) {
        double height(double along) {
            double share = along / whole;
            return share < 0.5
                    ? leg.fromY() + (leg.middleY() - leg.fromY()) * share * 2
                    : leg.middleY() + (leg.toY() - leg.middleY()) * (share * 2 - 1);
        }

        /** Of the part between two places seen from above. */
        double length(double from, double to) {
            double half = whole / 2;
            double early = Math.min(half, to) - Math.min(half, from);
            double late = Math.max(half, to) - Math.max(half, from);
            return early * Math.hypot(half, leg.middleY() - leg.fromY()) / half
                    + late * Math.hypot(half, leg.toY() - leg.middleY()) / half;
        }
    }
}
