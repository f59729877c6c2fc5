package thrumwright.plan;

import java.util.List;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.piece.Place;

/**
 * One end, row by row.
 *
 * @param onLoom height of its lowest line above the lower bar, mm
 * @param blocks from the lowest on the loom to the highest
 * @param before what its first row goes on from
 * @param after what the next row after it goes on from
 * @param edge height above its lowest line where the finished piece ends, mm: the outer line of the outermost block
 *     that stays
 * @param free warp between the edge and the loom's bar, mm
 */
public record EndPlan(
        Place place,
        double onLoom,
        List<BlockPlan> blocks,
        Course before,
        Course after,
        double edge,
        double free,
        Optional<Hem> hem,
        Optional<Finish> finish) {
    public EndPlan {
        blocks = List.copyOf(blocks);
    }

    /** On the loom, mm. */
    public double height() {
        return blocks.isEmpty() ? 0 : blocks.get(blocks.size() - 1).top();
    }

    /** Height of what comes out again, mm. */
    public double comingOut() {
        return blocks.stream()
                .filter(BlockPlan::comesOut)
                .mapToDouble(BlockPlan::height)
                .sum();
    }

    /** How much of this end the front shows when the piece is finished, mm, with what a fold adds. */
    public double inFront() {
        double outermost = hem.map(Hem::foldLine).orElse(edge);
        double cloth = place == Place.START ? height() - outermost : outermost;
        return cloth + hem.map(Hem::gain).orElse(0.0);
    }

    public Optional<BlockPlan> block(String id) {
        return blocks.stream().filter(plan -> plan.block().id().equals(id)).findFirst();
    }

    /** A block's upper line above the loom's lower bar, mm. */
    public double reach(BlockPlan block) {
        return onLoom + block.top();
    }
}
