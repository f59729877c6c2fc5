package thrumwright.cord;

/** A part of a taut cord's middle line: an arc on a peg or a straight run between two. */
public sealed interface PathSection {
    /** In mm, 0 or more. */
    double length();

    /** The point at a share of the way along, from 0 to 1. */
    Spot at(double share);

    /**
     * A place seen from above.
     *
     * @param x across the width, mm
     * @param z towards the weaver, mm
     */
    record Spot(double x, double z) {}

    /**
     * An arc.
     *
     * @param sweep radians, positive anticlockwise
     */
    record Arc(double x, double z, double radius, double start, double sweep) implements PathSection {
        @Override
        public double length() {
            return radius * Math.abs(sweep);
        }

        @Override
        public Spot at(double share) {
            double angle = start + sweep * share;
            return new Spot(x + radius * Math.cos(angle), z + radius * Math.sin(angle));
        }
    }

    /** A straight run. */
    record Run(double fromX, double fromZ, double toX, double toZ) implements PathSection {
        @Override
        public double length() {
            return Math.hypot(toX - fromX, toZ - fromZ);
        }

        @Override
        public Spot at(double share) {
            return new Spot(fromX + (toX - fromX) * share, fromZ + (toZ - fromZ) * share);
        }
    }
}
