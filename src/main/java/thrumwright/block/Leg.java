package thrumwright.block;

import thrumwright.cord.Route;
import thrumwright.cord.TautCord;

/**
 * A stretch of a yarn's path: a route round the warp ends seen from above, and its climb up the warp.
 *
 * @param fromY height at the beginning, mm above the block's lower edge
 * @param middleY height half way along
 * @param toY height at the end
 */
public record Leg(Route route, double fromY, double middleY, double toY) {
    static Leg level(Route route, double y) {
        return new Leg(route, y, y, y);
    }

    static Leg climbing(Route route, double fromY, double toY) {
        return new Leg(route, fromY, (fromY + toY) / 2, toY);
    }

    /** The length by the peg engine, mm, 0 or more: a cylinder unrolls flat, so a climb Δy over λ makes √(λ² + Δy²). */
    public double length() {
        double seenFromAbove = TautCord.along(route).length();
        double half = seenFromAbove / 2;
        return Math.hypot(half, middleY - fromY) + Math.hypot(half, toY - middleY);
    }
}
