package thrumwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/** Plans a whole piece: the start, then the design's last pick, then the top. */
record Planner(Piece piece) {
    Plan plan() {
        EndPlanner startPlanner = new EndPlanner(piece, Place.START);
        EndPlanner topPlanner = new EndPlanner(piece, Place.TOP);
        Course beginning = Course.beginning();
        List<BlockPlan> startBlocks = startPlanner.blocks(beginning);
        EndPlan start = startPlanner.end(
                startBlocks, beginning, piece.loom().clearance().mm());
        Course afterDesign = afterDesign();
        List<BlockPlan> topBlocks = topPlanner.blocks(afterDesign);
        double topHeight =
                topBlocks.isEmpty() ? 0 : topBlocks.get(topBlocks.size() - 1).top();
        Budget budget = Budget.of(piece, start.height(), topHeight, topPlanner.closed(topBlocks));
        EndPlan top = topPlanner.end(topBlocks, afterDesign, budget.designEnds());
        return new Plan(piece, start, top, afterDesign, budget, totals(start, top));
    }

    /** What isn't known is assumed: the last pick went under the left edge end and came out at the right. */
    private Course afterDesign() {
        return new Course(
                piece.design().lastShed().or(() -> Optional.of(Shed.UNDER_FIRST)),
                piece.design().lastSide().orElse(Side.RIGHT));
    }

    /** Warp yarn in all, mm. */
    static double warpYarn(Piece piece, EndPlan start, EndPlan top) {
        int ends = piece.warp().ends();
        return ClosedWarp.of(piece, start, top)
                .map(closed -> closed.length(ends))
                .orElse(ends * piece.loom().warpPerEnd().mm());
    }

    private List<YarnTotal> totals(EndPlan start, EndPlan top) {
        List<YarnTotal> totals = new ArrayList<>();
        for (Yarn yarn : piece.yarns()) {
            boolean warp = yarn.id().equals(piece.warp().yarnId());
            double inWarp = warp ? warpYarn(piece, start, top) : 0;
            YarnTotal total = new YarnTotal(yarn, inWarp, start.cut(yarn) + top.cut(yarn));
            if (total.length() > 0) {
                totals.add(total);
            }
        }
        return totals;
    }
}
