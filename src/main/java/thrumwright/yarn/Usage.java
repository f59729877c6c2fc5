package thrumwright.yarn;

import java.util.Map;
import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * What the weaver measured while weaving: so many picks across the whole warp took so much yarn, without the tails.
 *
 * @param picks 1 or more
 * @param length of the yarn that lies in them
 */
public record Usage(int picks, Length length) {
    public Usage {
        Objects.requireNonNull(length);
        if (picks < 1 || picks > 100_000 || !(length.mm() > 0)) {
            throw new BadMeasure("usage.not", Map.of());
        }
    }
}
