package thrumwright.yarn;

import java.util.Map;
import thrumwright.measure.Refused;

/**
 * So many strands of one yarn in a bundle.
 *
 * @param count 1 to {@link #MOST}
 */
public record Strands(Yarn yarn, int count) {
    /** More of one yarn can't be wound by hand (common practice, no source). */
    public static final int MOST = 60;

    /** @throws Refused if it is no strand or too many, or the yarn is a bundle itself */
    public Strands {
        if (count < 1 || count > MOST) {
            throw new Refused("wound.strands", Map.of("count", count, "most", MOST));
        }
        if (yarn.bundle().isPresent()) {
            throw new Refused("wound.bundle", Map.of("yarn", yarn.name()));
        }
    }

    /** Of another yarn, or of this one with what was changed on it. */
    public Strands of(Yarn other) {
        return new Strands(other, count);
    }
}
