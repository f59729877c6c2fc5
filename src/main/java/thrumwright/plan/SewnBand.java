package thrumwright.plan;

import java.util.Optional;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Setting;
import thrumwright.block.Turning;
import thrumwright.measure.Decimals;
import thrumwright.measure.Length;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Thickness;

/**
 * A band of cloth that is sewn over what is turned back at a fold: a cotton tape, or a strip woven for it. Warp ends cut to
 * about an inch lie under a tape an inch wide (P. Dozier, ‘Finishing Four Sides of Tapestries’, American Tapestry Alliance).
 *
 * @param width of the band, mm
 * @param thickness of the band, mm
 * @param turned how far the cloth that is turned back reaches from the turned edge, mm
 * @param ends how far the warp ends lie beyond that cloth, mm
 * @param trimmed whether they are to be trimmed to it; else their own finish says how long they are
 * @param length to cut, mm
 * @param widths how many times the reference width that is, rounded up to a half
 */
public record SewnBand(
        double width, double thickness, double turned, double ends, boolean trimmed, double length, double widths) {
    /** From the turned edge to the band's first seam, mm, so that nothing of it shows in front (common practice, no source). */
    public static final double BACK = 3;
    /** From the trimmed ends to the band's second seam, mm, which then goes through clear cloth (common practice, no source). */
    public static final double BEYOND = 5;
    /** What is turned in at either end of the band, mm (common practice, no source). */
    public static final double TURNED_IN = 10;
    /** The shortest that warp ends are trimmed to, mm (from memory): shorter ones slip out of their edge. */
    public static final double SHORTEST = 10;
    /** The longest that they need be, mm: about an inch (P. Dozier). */
    public static final double LONGEST = 25;

    /**
     * @param turned of the cloth, mm
     * @param finish what becomes of the warp ends, if they aren't just trimmed
     * @param warp the warp yarn on its own warp
     * @param cloth width of the finished cloth, mm
     * @param step to which cuts are rounded up, mm
     * @param reference width in which cuts are also counted, mm
     */
    static SewnBand of(
            Turning.Faced band,
            double turned,
            Optional<EdgeFinish> finish,
            Setting warp,
            double cloth,
            Length step,
            double reference) {
        double width = band.width().mm();
        double covered = Math.max(SHORTEST, Math.min(LONGEST, BACK + width - BEYOND - turned));
        double length = Decimals.roundedUp(cloth + 2 * TURNED_IN, step.mm());
        return new SewnBand(
                width,
                band.thick(),
                turned,
                finish.map(ends -> ends.beyond(warp)).orElse(covered),
                finish.isEmpty(),
                length,
                Decimals.roundedUp(length / reference, 0.5));
    }

    /** From the turned edge to the band's far edge, mm, more than 0. */
    public double depth() {
        return BACK + width;
    }

    /**
     * How wide it must be at least to cover what is turned back and be sewn to clear cloth, mm; any: with the shortest ends, if they are
     * to be trimmed.
     */
    public double needed() {
        return turned + (trimmed ? SHORTEST : ends) + BEYOND - BACK;
    }

    public boolean covers() {
        return width >= needed() - 1e-9;
    }

    /**
     * About how heavy it is, in grams, 0 or more: cotton whose yarns lie side by side in two layers, each yarn filled as yarns are, ρ · 0.60 ·
     * π/4 of its volume (derived, an upper figure).
     */
    public double grams() {
        double cubicCentimetres = width * thickness * length / 1000;
        return cubicCentimetres * Fibre.COTTON.density() * Thickness.FILLING * Math.PI / 4;
    }
}
