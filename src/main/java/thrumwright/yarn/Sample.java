package thrumwright.yarn;

import java.util.Map;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** What the weaver measured on a woven sample: so many picks in so much height. */
public record Sample(int picks, Length height) {
    /** No pick of any yarn is taller, mm. */
    private static final double TALLEST = 100;

    public Sample {
        if (picks < 1 || !(height.mm() > 0)) {
            throw new BadMeasure("sample.not", Map.of());
        }
        if (height.mm() / picks > TALLEST) {
            throw new BadMeasure("sample.tall", Map.of("picks", picks, "height", height));
        }
    }

    /** Height of one pick, mm, above 0 and at most 100. */
    public double beaten() {
        return height.mm() / picks;
    }
}
