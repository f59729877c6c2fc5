package thrumwright.plan;

import java.util.List;
import java.util.Optional;
import thrumwright.block.EdgeFinish;

/**
 * What becomes of the warp ends at one end.
 *
 * @param groups sizes of the groups from the left
 * @param needed free warp that each end needs beyond the edge, mm, 0 or more
 * @param free what there is between the edge and the loom's bar, mm; negative where it doesn't fit
 * @param wrapping what tassels are wrapped with
 */
public record Finish(EdgeFinish block, List<Integer> groups, double needed, double free, Optional<Wrapping> wrapping) {
    public Finish {
        groups = List.copyOf(groups);
    }
}
