package thrumwright.plan;

import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;

/**
 * A lining of cloth for the back, sewn on along its top edge and both sides; its lower edge hangs free. All in mm.
 *
 * @param margin from the sides and the lower edge of the piece to those of the lining
 * @param below from the top edge of the piece to that of the lining: below a bar if the hem takes one
 * @param allowance what is turned under on all four sides
 * @param width of the lining when it is sewn on
 * @param height of the lining when it is sewn on
 */
public record Lining(double margin, double below, double allowance, double width, double height) {
    /** Common practice, no source: so nothing of it shows in front. */
    private static final double MARGIN = 10;

    /** Common practice, no source: the usual seam allowance of dressmakers. */
    private static final double ALLOWANCE = 15;

    /**
     * @param top of the piece, whose hem may take a bar
     * @param width finished, mm
     * @param height finished, mm
     */
    static Lining of(Piece piece, EndPlan top, double width, double height) {
        UnitSystem units = piece.habits().units();
        double margin = units.length(MARGIN, 3.0 / 8);
        double bar = top.hem()
                .filter(hem -> hem.sleeve().filter(Hem.Sleeve::slidesIn).isPresent())
                .map(Hem::depth)
                .orElse(0.0);
        return new Lining(
                margin,
                bar + margin,
                units.length(ALLOWANCE, 5.0 / 8),
                Math.max(0, width - 2 * margin),
                Math.max(0, height - bar - 2 * margin));
    }

    /** Width to cut, mm, more than 0. */
    public double cutWidth() {
        return width + 2 * allowance;
    }

    /** Height to cut, mm, more than 0. */
    public double cutHeight() {
        return height + 2 * allowance;
    }

    /** How long it is sewn, mm, 0 or more. */
    public double seam() {
        return width + 2 * height;
    }
}
