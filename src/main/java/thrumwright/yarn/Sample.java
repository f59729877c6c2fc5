package thrumwright.yarn;

import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** What the weaver measured on a woven sample: so many picks in so much height. */
public record Sample(int picks, Length height) {
    public Sample {
        if (picks < 1 || !(height.mm() > 0)) {
            throw new BadMeasure("A sample is some picks in some height, like “20 picks in 2 cm”.");
        }
    }

    /** Height of one pick in mm. */
    public double beaten() {
        return height.mm() / picks;
    }
}
