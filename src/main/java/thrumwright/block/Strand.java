package thrumwright.block;

import java.util.List;

/** One continuous yarn of a block, from where it begins to where it ends. */
public record Strand(List<Leg> legs) {
    public Strand {
        legs = List.copyOf(legs);
    }

    /** The length by the peg engine, mm, 0 or more. */
    public double length() {
        double sum = 0;
        for (Leg leg : legs) {
            sum += leg.length();
        }
        return sum;
    }
}
