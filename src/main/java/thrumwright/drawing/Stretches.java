package thrumwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.block.Strand;
import thrumwright.cord.Section;
import thrumwright.cord.TautCord;

/** Cuts a block's strands where they pass from the front of the warp to the back. */
final class Stretches {
    private static final double ARC_STEP = Math.PI / 7;

    private final Setting setting;
    private final List<Stretch> done = new ArrayList<>();
    private final List<double[]> current = new ArrayList<>();
    private boolean front;
    private double order;

    private Stretches(Setting setting) {
        this.setting = setting;
    }

    /** All stretches, those that lie on top last. */
    static List<Stretch> of(Setting setting, List<Strand> strands) {
        Stretches stretches = new Stretches(setting);
        for (Strand strand : strands) {
            stretches.add(strand);
        }
        stretches.done.sort(Comparator.comparingDouble(Stretch::order));
        return List.copyOf(stretches.done);
    }

    private void add(Strand strand) {
        int legs = strand.legs().size();
        for (int i = 0; i < legs; i++) {
            add(strand.legs().get(i), (double) i / legs, 1.0 / legs);
        }
        finish();
    }

    private void add(Leg leg, double begun, double share) {
        TautCord cord = TautCord.along(leg.route());
        double whole = Math.max(cord.length(), 1e-9);
        double gone = 0;
        for (Section section : cord.sections()) {
            int steps = section instanceof Section.Arc arc
                    ? (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / ARC_STEP))
                    : 2;
            for (int step = 0; step <= steps; step++) {
                double along = gone + section.length() * step / steps;
                order = begun + share * along / whole;
                add(section.at((double) step / steps), height(leg, along / whole));
            }
            gone += section.length();
        }
    }

    private static double height(Leg leg, double share) {
        return share < 0.5
                ? leg.fromY() + (leg.middleY() - leg.fromY()) * share * 2
                : leg.middleY() + (leg.toY() - leg.middleY()) * (share * 2 - 1);
    }

    private void add(Section.Spot spot, double y) {
        double[] point = {spot.x(), y, spot.z()};
        if (!current.isEmpty()) {
            double[] last = current.get(current.size() - 1);
            boolean changes = front ? spot.z() < -1e-9 : spot.z() > 1e-9;
            if (changes) {
                double[] crossing = between(last, point);
                current.add(crossing);
                finish();
                current.add(crossing);
                front = spot.z() > 0;
            } else if (Math.hypot(Math.hypot(last[0] - point[0], last[1] - point[1]), last[2] - point[2]) < 1e-7) {
                return;
            }
        } else {
            front = spot.z() >= -1e-9;
        }
        current.add(point);
    }

    /** Where the yarn passes the plane of the warp between two points. */
    private static double[] between(double[] from, double[] to) {
        double share = from[2] == to[2] ? 0.5 : from[2] / (from[2] - to[2]);
        double held = Math.max(0, Math.min(1, share));
        return new double[] {from[0] + (to[0] - from[0]) * held, from[1] + (to[1] - from[1]) * held, 0};
    }

    private void finish() {
        if (current.size() > 1) {
            int points = current.size();
            double[] x = new double[points];
            double[] y = new double[points];
            double[] width = new double[points];
            for (int i = 0; i < points; i++) {
                x[i] = current.get(i)[0];
                y[i] = current.get(i)[1];
                width[i] = width(current.get(i)[2]);
            }
            done.add(new Stretch(front, order, x, y, width));
        }
        current.clear();
    }

    /** On the face a float swells to its relaxed diameter; in the gap it is squeezed to its beaten thickness. */
    private double width(double z) {
        double raised = Math.min(1, Math.abs(z) / setting.radius());
        double eased = raised * raised * (3 - 2 * raised);
        return setting.beaten() + (setting.relaxed() - setting.beaten()) * eased;
    }
}
