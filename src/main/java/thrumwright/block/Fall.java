package thrumwright.block;

import java.util.List;

/**
 * How one warp end falls from the edge of the cloth: straight from spot to spot, in the plane of the warp.
 *
 * @param spots at least two, the first at the edge
 * @param knots how many knots it goes through; what they take comes on top of the way
 */
public record Fall(List<Spot> spots, int knots) {
    /**
     * A place below the edge.
     *
     * @param x across the width from the left edge end, mm
     * @param down from the edge outwards, mm
     */
    public record Spot(double x, double down) {}

    public Fall {
        spots = List.copyOf(spots);
    }

    /** The way without what the knots take, mm, 0 or more. */
    public double length() {
        double sum = 0;
        for (int i = 1; i < spots.size(); i++) {
            Spot from = spots.get(i - 1);
            Spot to = spots.get(i);
            sum += Math.hypot(to.x() - from.x(), to.down() - from.down());
        }
        return sum;
    }
}
