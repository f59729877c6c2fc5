package thrumwright.plan;

import thrumwright.block.Support;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;

/**
 * The hook-and-loop strip that a piece is offered to hang by. Strips are 1.9 to 5 cm wide and chosen by the weight and the
 * size of the textile (CCI Notes 13/4); where one width ends and the next begins is common practice, no source.
 *
 * @param width in the piece's units
 * @param depth hem depth that it needs, mm
 */
public record HangingStrip(Length width, double depth) {
    /** The most that the narrowest strip and the next bear, grams for a metre of it (common practice, no source). */
    private static final double NARROW_BEARS = 1000;

    private static final double MIDDLE_BEARS = 3000;

    static HangingStrip of(Plan plan) {
        double load = Weight.of(plan).total() / (plan.finishedWidth() / 1000);
        boolean inches = plan.piece().habits().units() == UnitSystem.INCHES;
        String width = load <= NARROW_BEARS
                ? inches ? "3/4 in" : "2 cm"
                : load <= MIDDLE_BEARS ? inches ? "1 1/2 in" : "4 cm" : inches ? "2 in" : "5 cm";
        Length typed = Length.parse(width);
        return new HangingStrip(typed, Hem.Sleeve.stripDepth(typed.mm()));
    }

    /** As something that a hem takes. */
    public Support support() {
        return new Support.Strip(width);
    }

    /** Whether a hem is deep enough to stand behind it. */
    public boolean fits(Hem hem) {
        return hem.room() >= depth;
    }
}
