package thrumwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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
 * @param knownStart what was worked out for another state of the start, or nothing
 */
record Planner(Piece piece, Measures measures, EndMemory knownStart, EndMemory knownTop) {
    Planned planned() {
        Course beginning = Course.beginning();
        Course afterDesign = afterDesign();
        EndPlanner startPlanner = new EndPlanner(piece, Place.START, knownStart);
        EndPlanner topPlanner = new EndPlanner(piece, Place.TOP, knownTop);
        List<BlockPlan> planned = startPlanner.blocks(beginning);
        List<BlockPlan> plannedTop = topPlanner.blocks(afterDesign);
        BareEnds asPlanned = new BareEnds(startPlanner.bare(planned), topPlanner.bare(plannedTop));
        LoomRoom room = LoomRoom.of(piece, asPlanned);
        Grown grown = Grown.on(piece, measures, room);
        List<BlockPlan> startBlocks = grown.start(planned);
        double startLine = room.clearance() + Grown.height(startBlocks);
        double design = grown.design(startLine);
        List<BlockPlan> topBlocks =
                grown.top(grown.like(planned, startBlocks, plannedTop), startLine, startLine + design);
        BareEnds ends = measures.isEmpty()
                ? asPlanned
                : new BareEnds(startPlanner.bare(startBlocks), topPlanner.bare(topBlocks));
        Budget budget =
                Budget.of(room, ends.start().height(), design, ends.top().height(), topPlanner.closed(topBlocks));
        EndPlan start = startPlanner.end(startBlocks, beginning, room.clearance(), room.freeBelow(budget, ends));
        EndPlan top = topPlanner.end(topBlocks, afterDesign, budget.designEnds(), room.freeAbove(budget, ends));
        Plan plan = new Plan(piece, start, top, afterDesign, budget, room, List.of());
        return new Planned(plan.with(totals(plan)), startPlanner.found(), topPlanner.found());
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

    /** A bundle is told by the yarns of its strands. */
    private List<YarnTotal> totals(Plan plan) {
        DesignWeft design = DesignWeft.of(piece);
        Optional<SewnCord> cord = plan.sewnCord();
        double warp = plan.warpYarn();
        List<Yarn> yarns = piece.yarns();
        double[] cut = plan.start().cuts(yarns);
        double[] cutAbove = plan.top().cuts(yarns);
        Arrays.setAll(cut, i -> cut[i] + cutAbove[i]);
        List<YarnTotal> totals = new ArrayList<>();
        for (Yarn yarn : yarns) {
            double inWarp = piece.warpYarn().strandsOf(yarn.id()) * warp;
            double inEnds = IntStream.range(0, cut.length)
                    .mapToDouble(i -> yarns.get(i).strandsOf(yarn.id()) * cut[i])
                    .sum();
            double inDesign = design.parts().stream()
                    .mapToDouble(part -> part.yarn().strandsOf(yarn.id()) * part.length())
                    .sum();
            double sewnOn = cord.map(one -> one.yarn().strandsOf(yarn.id()) * one.yarnLength())
                    .orElse(0.0);
            YarnTotal total = new YarnTotal(yarn, inWarp, inEnds, inDesign, sewnOn);
            if (total.length() > 0) {
                totals.add(total);
            }
        }
        return totals;
    }
}
