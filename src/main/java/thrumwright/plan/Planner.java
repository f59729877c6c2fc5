package thrumwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/**
 * Plans a whole piece: the start, then the design's last pick, then the top.
 *
 * @param measures what is reckoned with of what was measured on the loom
 */
record Planner(Piece piece, Measures measures) {
    Plan plan() {
        EndPlanner startPlanner = new EndPlanner(piece, Place.START);
        EndPlanner topPlanner = new EndPlanner(piece, Place.TOP);
        Grown grown = Grown.on(piece, measures);
        Course beginning = Course.beginning();
        double clearance = piece.loom().clearance().mm();
        List<BlockPlan> planned = startPlanner.blocks(beginning);
        EndPlan start = startPlanner.end(grown.blocks(Place.START, planned, clearance), beginning, clearance);
        Course afterDesign = afterDesign();
        List<BlockPlan> like = grown.like(planned, start.blocks(), topPlanner.blocks(afterDesign));
        double design = grown.design(clearance + start.height());
        double ends = clearance + start.height() + design;
        List<BlockPlan> topBlocks = grown.blocks(Place.TOP, like, ends);
        Budget budget = Budget.of(piece, start.height(), design, Grown.height(topBlocks), topPlanner.closed(topBlocks));
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
