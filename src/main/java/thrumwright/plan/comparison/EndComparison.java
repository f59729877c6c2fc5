package thrumwright.plan.comparison;

import java.util.ArrayList;
import java.util.List;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.comparison.Alignment.Line;

/**
 * The top beside the start. {@link #pairs()} tells how the weaving differs, block by block; {@link #front()} how the
 * finished ends differ for somebody who stands before the piece.
 *
 * @param pairs from the outer edges to the design: upwards in the start, downwards in the top
 * @param front from the outer edges to the design; empty if both look alike, which a true mirror does
 */
public record EndComparison(List<BlockPair> pairs, List<FrontDifference> front) {
    public EndComparison {
        pairs = List.copyOf(pairs);
        front = List.copyOf(front);
    }

    public static EndComparison of(Plan plan) {
        return new EndComparison(pairs(plan), Front.of(plan.start()).differencesTo(Front.of(plan.top())));
    }

    /** What the front of one finished end shows, from the outer edge to the design. */
    public static List<FrontBand> front(Plan plan, Place place) {
        return Front.of(plan.end(place)).bands();
    }

    /** Whether both finished ends look alike from the front. */
    public boolean alike() {
        return front.isEmpty();
    }

    private static List<BlockPair> pairs(Plan plan) {
        List<BlockPair> pairs = new ArrayList<>();
        for (Line<BlockPlan> line :
                Alignment.of(plan.start().inward(), plan.top().inward(), EndComparison::likeness)) {
            pairs.add(BlockPair.of(line.left(), line.right()));
        }
        return pairs;
    }

    /** Blocks of one sort answer each other, those with one id first; others only if they have one id. */
    private static int likeness(BlockPlan start, BlockPlan top) {
        int id = start.block().id().equals(top.block().id()) ? 4 : 0;
        boolean sort = start.block().getClass() == top.block().getClass();
        int kind = start.block().key().equals(top.block().key()) ? 2 : 0;
        return id + kind + (sort ? 1 : 0);
    }
}
