package thrumwright.plan;

import thrumwright.measure.Decimals;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Habits;

/**
 * Sewing a hem down by hand. Each stitch goes on by the spacing and twice through one layer of cloth, p + 2T (derived; an
 * upper figure, since it catches only the backs of the picks).
 *
 * @param stitches over the whole width
 * @param thread length in all with what fastens its ends, mm
 * @param threads how many lengths of thread
 * @param each length to cut for each, mm
 */
public record HemStitch(int stitches, double thread, int threads, double each) {
    /** From one stitch to the next, mm (common practice, no source). */
    public static final double SPACING = 7;
    /** Thread that fastens each end of a length, mm (from memory). */
    private static final double FASTENING = 50;
    /** The longest thread that sews well, mm (from memory). */
    private static final double LONGEST = 500;

    /** From one stitch to the next, mm, more than 0: as it can be read off a rule of those units. */
    public static double spacing(UnitSystem units) {
        return units.length(SPACING, 1.0 / 4);
    }

    /**
     * @param width of the hem, mm, more than 0
     * @param thickness T of the cloth, mm, more than 0
     * @param habits whose units space the stitches, and to whose step cuts are rounded up
     */
    public static HemStitch of(double width, double thickness, Habits habits) {
        double spacing = spacing(habits.units());
        int stitches = (int) Math.ceil(width / spacing - 1e-9);
        double sewn = stitches * (spacing + 2 * thickness);
        int threads = (int) Math.max(1, Math.ceil(sewn / (LONGEST - 2 * FASTENING) - 1e-9));
        double each =
                Decimals.roundedUp(sewn / threads + 2 * FASTENING, habits.step().mm());
        return new HemStitch(stitches, threads * each, threads, each);
    }
}
