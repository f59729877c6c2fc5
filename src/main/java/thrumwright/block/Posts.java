package thrumwright.block;

import java.util.Map;
import thrumwright.measure.BadMeasure;

/**
 * The two upright posts of a loom, one on each side of the warp.
 *
 * @param diameter mm, more than 0
 * @param gap clear space from the outermost warp end to the post, mm, 0 or more
 */
public record Posts(double diameter, double gap) {
    public Posts {
        if (!(diameter > 0 && gap >= 0)) {
            throw new BadMeasure("posts.not", Map.of());
        }
    }
}
