package thrumwright.yarn;

import java.util.Map;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** What the weaver measured on a woven sample: so many picks in so much height. */
public record Sample(int picks, Length height) {
    /** No pick of any yarn is taller, mm. */
    private static final double TALLEST = 100;

    /** Nor lower, mm: a quarter of the thinnest yarn that there may be. */
    private static final double LOWEST = 0.005;

    public Sample {
        if (picks < 1 || !(height.mm() > 0)) {
            throw new BadMeasure("sample.not", Map.of());
        }
        if (height.mm() / picks > TALLEST) {
            throw new BadMeasure("sample.tall", Map.of("picks", picks, "height", height));
        }
        if (height.mm() / picks < LOWEST) {
            throw new BadMeasure("sample.low", Map.of("picks", picks, "height", height));
        }
    }

    /** Height of one pick, mm, 0.005 to 100. */
    public double beaten() {
        return height.mm() / picks;
    }
}
