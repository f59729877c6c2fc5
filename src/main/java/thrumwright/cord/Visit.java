package thrumwright.cord;

/**
 * One visit of the cord to a peg.
 *
 * @param x the peg's middle across the width, mm
 * @param z the peg's middle towards the weaver, mm
 * @param radius from the peg's middle to the cord's own middle line, mm, more than 0
 * @param sense which way the cord turns
 * @param extraTurns further full turns round the peg, 0 or more
 */
public record Visit(double x, double z, double radius, Sense sense, int extraTurns) {
    public Visit {
        if (!(radius > 0) || !Double.isFinite(radius) || !Double.isFinite(x) || !Double.isFinite(z)) {
            throw new IllegalArgumentException("a peg needs a place and a radius above 0");
        }
        if (extraTurns < 0) {
            throw new IllegalArgumentException("extra turns are 0 or more");
        }
    }

    /** A visit to a peg on the line of the warp, without extra turns; x and radius in mm, the radius more than 0. */
    public static Visit of(double x, double radius, Sense sense) {
        return new Visit(x, 0, radius, sense, 0);
    }

    boolean samePegAs(Visit other) {
        return x == other.x && z == other.z;
    }
}
