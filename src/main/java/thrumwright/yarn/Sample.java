package thrumwright.yarn;

import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** What the weaver measured on a woven sample: so many picks in so much height. */
public record Sample(int picks, Length height) {
    /** No pick of any yarn is taller, mm. */
    private static final double TALLEST = 100;

    public Sample {
        if (picks < 1 || !(height.mm() > 0)) {
            throw new BadMeasure("A sample is some picks in some height, like “20 picks in 2 cm”.");
        }
        if (height.mm() / picks > TALLEST) {
            throw new BadMeasure("Picks can't be so tall: “" + picks + " in " + height
                    + "” would make each more than 10 cm. A sample is like “20 picks in 2 cm”.");
        }
    }

    /** Height of one pick in mm. */
    public double beaten() {
        return height.mm() / picks;
    }
}
