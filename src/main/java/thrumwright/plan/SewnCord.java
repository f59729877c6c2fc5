package thrumwright.plan;

import thrumwright.measure.Decimals;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.yarn.Packing;
import thrumwright.yarn.Yarn;

/**
 * A cord or braid that is sewn along edges. It is made of the yarn of the design's first stripe, so many strands that their
 * bundle is as thick as it is to be. All in mm.
 *
 * @param count how many cords
 * @param length of one, with what is tucked in
 * @param tucked what is tucked in at either end of one
 * @param strands in each, an even number if it is plied, a number of threes if it is plaited
 * @param strand length to cut for each strand
 */
public record SewnCord(Yarn yarn, int count, double length, double tucked, int strands, double strand) {
    /** Common practice, no source. */
    private static final double TUCKED = 20;

    /** Yarn in the knots at both ends of a cord, mm (from memory). */
    public static final double KNOTS = 100;

    /** Cut length over the length of the cord, plied and plaited: published hand rules for fringes. */
    private static final double PLIED = 1.25;

    private static final double PLAITED = 1.5;

    /**
     * Once all round it lies on the outside of the edge, in the middle half its thickness from it, and so π·thick longer.
     *
     * @param width finished, mm
     * @param height finished, mm
     */
    static SewnCord of(Piece piece, EdgeCord cord, double width, double height) {
        double tucked = piece.habits().units().length(TUCKED, 3.0 / 4);
        double along = switch (cord.along()) {
            case ENDS -> width;
            case SIDES -> height;
            case ALL_ROUND -> 2 * (width + height) + Math.PI * cord.thick().mm();
        };
        Yarn yarn = piece.stripe(Place.START);
        double length = along + 2 * tucked;
        double strand = length * (cord.plaited() ? PLAITED : PLIED) + KNOTS;
        return new SewnCord(
                yarn,
                cord.along() == EdgeCord.Along.ALL_ROUND ? 1 : 2,
                length,
                tucked,
                strands(cord, yarn),
                Decimals.roundedUp(strand, piece.habits().step().mm()));
    }

    private static int strands(EdgeCord cord, Yarn yarn) {
        int step = cord.plaited() ? 3 : 2;
        int strands = step;
        while (Packing.ratio(strands) * yarn.diameter() < cord.thick().mm()) {
            strands += step;
        }
        return strands;
    }

    /** How long all of them are sewn, mm, more than 0. */
    public double seam() {
        return count * (length - 2 * tucked);
    }

    /** Yarn in all of them, mm, more than 0. */
    public double yarnLength() {
        return count * strands * strand;
    }
}
