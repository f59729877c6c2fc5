package thrumwright.plan;

import java.util.Optional;

/**
 * The corners of a hem, turned in at 45° before the hem is folded, so that it doesn't peep out at the sides. The crease begins
 * on the side where the bend of the fold ends, πT/4 from the fold's line, so that the corner's third layer lies clear of the
 * fold; it runs to the outer edge, as far from the side as it is deep (derived).
 *
 * @param back from the fold's line to where the crease begins on the side, mm
 * @param leg from the side to where it meets the hem's outer edge, mm
 */
public record Mitre(double back, double leg) {
    /** @return empty where the whole hem is used up by the bend */
    static Optional<Mitre> of(double cloth, double thickness) {
        double back = Math.PI * thickness / 4;
        return cloth > back ? Optional.of(new Mitre(back, cloth - back)) : Optional.empty();
    }

    /** Length of the crease, mm, more than 0: leg · √2. */
    public double crease() {
        return leg * Math.sqrt(2);
    }

    /**
     * What is left of the hem's outer edge between both corners, mm; below 0 they meet.
     *
     * @param width of the hem, mm, more than 0
     */
    public double between(double width) {
        return width - 2 * leg;
    }
}
