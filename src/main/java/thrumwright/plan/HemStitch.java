package thrumwright.plan;

import thrumwright.measure.Decimals;

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

    /**
     * @param width of the hem, mm
     * @param thickness T of the cloth, mm
     * @param step to which cuts are rounded up, mm
     */
    public static HemStitch of(double width, double thickness, double step) {
        int stitches = (int) Math.ceil(width / SPACING - 1e-9);
        double sewn = stitches * (SPACING + 2 * thickness);
        int threads = (int) Math.max(1, Math.ceil(sewn / (LONGEST - 2 * FASTENING) - 1e-9));
        double each = Decimals.roundedUp(sewn / threads + 2 * FASTENING, step);
        return new HemStitch(stitches, threads * each, threads, each);
    }
}
