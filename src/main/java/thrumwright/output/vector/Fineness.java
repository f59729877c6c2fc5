package thrumwright.output.vector;

/**
 * How finely outlines are kept.
 *
 * @param unseen how far off nobody sees, units, more than 0
 * @param grid places are whole numbers of so many hundredths of a unit
 */
public record Fineness(double unseen, int grid) {
    /** For paper: finer than printers print, and still fine enlarged tenfold. */
    public static final Fineness PAPER = new Fineness(0.07, 5);
    /** For a browser, whose unit is a 96th of an inch: a tenth of a dot. */
    public static final Fineness SCREEN = new Fineness(0.1, 10);

    /**
     * The nearest place, in hundredths of a unit.
     *
     * @param place units, either sign
     */
    public int hundredths(double place) {
        return (int) Math.floor(place * 100 / grid + 0.5 + 1e-8) * grid;
    }
}
