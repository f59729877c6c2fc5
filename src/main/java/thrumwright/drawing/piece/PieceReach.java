package thrumwright.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.drawing.edge.LoopPen;
import thrumwright.drawing.yarn.Tail;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/**
 * How far what is drawn of a piece reaches beyond its cloth, without any air: mm, 0 or more.
 *
 * @param left turns and tails beside the first warp end
 * @param right turns and tails beside the last
 * @param marks at either side marks and what lies in loops, though not the wedges of a fold
 * @param posts at either side the loom's; 0 if it has none
 * @param round beyond posts what is tied round them
 * @param below tails below the start's lowest line
 */
public record PieceReach(double left, double right, double marks, double posts, double round, double below) {
    /** How far a cord round a post reaches beyond it, with its outline: thicknesses. */
    private static final double ROUND = 0.6;

    /** @param turns how far those of the cloth reach beyond the edge ends, mm, 0 or more */
    static PieceReach of(Plan plan, Map<Place, List<Tail>> tails, double turns) {
        List<Tail> all = new ArrayList<>();
        tails.values().forEach(all::addAll);
        Setting ground = plan.piece().setting(plan.piece().warpYarn());
        return new PieceReach(
                Math.max(turns, farthest(all, Side.LEFT)),
                Math.max(turns, farthest(all, Side.RIGHT)),
                Math.max(marks(plan.start()), marks(plan.top())) * ground.spacing(),
                ground.posts()
                        .map(posts -> posts.gap() + posts.diameter() + ground.warp() / 2)
                        .orElse(0.0),
                ground.posts().isPresent() ? round(plan) : 0,
                tails.get(Place.START).stream()
                        .mapToDouble(tail -> Math.max(0, tail.down() - tail.y() + tail.thickness() / 2))
                        .max()
                        .orElse(0));
    }

    private static double round(Plan plan) {
        double tied = Stream.of(plan.start(), plan.top())
                .flatMap(end -> end.blocks().stream())
                .flatMap(block -> block.work().stream())
                .filter(work -> work.block().tied())
                .mapToDouble(work -> work.setting().relaxed())
                .max()
                .orElse(0);
        return ROUND * tied;
    }

    private static double farthest(List<Tail> tails, Side side) {
        return tails.stream()
                .filter(tail -> tail.side() == side)
                .mapToDouble(tail -> tail.out() + tail.thickness() / 2)
                .max()
                .orElse(0);
    }

    /** In distances between warp ends. */
    private static double marks(EndPlan end) {
        double loops = end.loops().isPresent() ? LoopPen.BEYOND : 0;
        double fold = end.hem().isPresent() ? Marks.FOLD : 0;
        double frame = end.blocks().stream().anyMatch(BlockPlan::comesOut) ? Marks.FRAME : 0;
        return Math.max(loops, Math.max(fold, frame));
    }

    /** Turns and tails at a side: mm, more than 0. */
    public double yarn(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** The farthest of all at either side: mm, more than 0. */
    public double outermost() {
        return Math.max(posts + round, Math.max(marks, Math.max(left, right)));
    }
}
