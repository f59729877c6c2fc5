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
        Course beginning = Course.beginning();
        Course afterDesign = afterDesign();
        EndPlanner startPlanner = new EndPlanner(piece, Place.START);
        EndPlanner topPlanner = new EndPlanner(piece, Place.TOP);
        List<BlockPlan> startBlocks = startPlanner.blocks(beginning);
        List<BlockPlan> topBlocks = topPlanner.blocks(afterDesign);
        BareEnds ends = new BareEnds(startPlanner.bare(startBlocks), topPlanner.bare(topBlocks));
        LoomRoom room = LoomRoom.of(piece, ends);
        Budget budget =
                Budget.of(piece, room, ends.start().height(), ends.top().height(), topPlanner.closed(topBlocks));
        EndPlan start = startPlanner.end(startBlocks, beginning, room.clearance(), room.freeBelow(budget, ends));
        EndPlan top = topPlanner.end(topBlocks, afterDesign, budget.designEnds(), room.freeAbove(budget, ends));
        return new Plan(piece, start, top, afterDesign, budget, room, totals(start, top, room));
    }

    /** What isn't known is assumed: the last pick went under the left edge end and came out at the right. */
    private Course afterDesign() {
        return new Course(
                piece.design().lastShed().or(() -> Optional.of(Shed.UNDER_FIRST)),
                piece.design().lastSide().orElse(Side.RIGHT));
    }

    /** Warp yarn in all, mm. */
    static double warpYarn(Piece piece, EndPlan start, EndPlan top, LoomRoom room) {
        int ends = piece.warp().ends();
        return ClosedWarp.of(piece, start, top)
                .map(closed -> closed.length(ends))
                .orElse(ends * room.perEnd());
    }

    private List<YarnTotal> totals(EndPlan start, EndPlan top, LoomRoom room) {
        List<YarnTotal> totals = new ArrayList<>();
        for (Yarn yarn : piece.yarns()) {
            boolean warp = yarn.id().equals(piece.warp().yarnId());
            double inWarp = warp ? warpYarn(piece, start, top, room) : 0;
            YarnTotal total = new YarnTotal(yarn, inWarp, start.cut(yarn) + top.cut(yarn));
            if (total.length() > 0) {
                totals.add(total);
            }
        }
        return totals;
    }
}
