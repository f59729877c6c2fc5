package thrumwright.plan.finding;

import static thrumwright.plan.finding.Value.height;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Budget;
import thrumwright.plan.EndPlan;
import thrumwright.plan.HeightRange;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.comparison.Front;
import thrumwright.plan.finding.Finding.Code;

/** Looks over what was measured while weaving: what it means for all that is still to come. */
final class GrowthFinder {
    /** Heights that differ by less are the same on a rule, mm. */
    private static final double SEEN = 0.5;

    private final Piece piece;
    private final Measures measures;
    private final Plan first;
    private final Plan woven;
    private final List<Finding> found = new ArrayList<>();

    private GrowthFinder(Piece piece) {
        this.piece = piece;
        this.measures = piece.measures();
        this.first = Plan.asFirstPlanned(piece);
        this.woven = Plan.asWoven(piece);
    }

    /** Nothing where nothing was measured. */
    static List<Finding> all(Piece piece) {
        return piece.measures().isEmpty() ? List.of() : new GrowthFinder(piece).all();
    }

    private List<Finding> all() {
        for (Place place : Place.values()) {
            unlikely(place);
            measured(place).or(() -> changed(place)).ifPresent(block -> end(place, block));
            found.addAll(new AmountsFinder(piece, woven.end(place)).all());
        }
        design();
        room();
        return found;
    }

    private Optional<Double> reached(Place place, BlockPlan block) {
        return measures.height(place.step(block.block().id()));
    }

    /** Heights that can't be, as they may stand in a file. */
    private void unlikely(Place place) {
        for (BlockPlan block : woven.end(place).blocks()) {
            reached(place, block)
                    .filter(reached -> Math.abs(reached
                                    - woven.above(place, woven.end(place).reach(block)))
                            > 1e-6)
                    .ifPresent(reached ->
                            found.add(unlikely(place.step(block.block().id()), reached)
                                    .at(place)
                                    .about(block.block())));
        }
    }

    private Finding unlikely(String step, double reached) {
        HeightRange range = HeightRange.of(piece, step);
        return Finding.of(
                Code.HEIGHT_UNLIKELY,
                Map.of("height", height(reached), "above", height(range.above()), "most", height(range.upTo())));
    }

    private void design() {
        measures.height(Measures.DESIGN)
                .filter(reached ->
                        Math.abs(reached - woven.above(Place.TOP, woven.budget().designEnds())) > 1e-6)
                .ifPresent(reached -> found.add(unlikely(Measures.DESIGN, reached)));
    }

    /** The last block of an end whose height is reckoned with. */
    private Optional<BlockPlan> measured(Place place) {
        return woven.end(place).blocks().stream()
                .filter(block -> reached(place, block)
                        .filter(reached -> Math.abs(reached
                                        - woven.above(place, woven.end(place).reach(block)))
                                <= 1e-6)
                        .isPresent())
                .reduce((one, other) -> other);
    }

    /** A block that was changed to make up for what isn't measured any more. */
    private Optional<BlockPlan> changed(Place place) {
        return woven.end(place).blocks().stream()
                .filter(block ->
                        measures.of(place.step(block.block().id())).planned().isPresent())
                .findFirst();
    }

    private void end(Place place, BlockPlan last) {
        EndPlan planned = first.end(place);
        EndPlan now = woven.end(place);
        double deeper = depth(now) - depth(planned);
        double line = now.onLoom() + now.height();
        double moved = line - planned.onLoom() - planned.height();
        if (Math.abs(deeper) >= Front.SAME_DEPTH) {
            Code code = deeper > 0 ? Code.HEM_COMES_DEEPER : Code.HEM_COMES_SHALLOWER;
            Optional<MakingUp.Made> made = new MakingUp(piece, now, woven(place)).by(-deeper);
            found.add(about(code, place, last, hem(now, planned, made))
                    .mendedBy(made.map(MakingUp.Made::picks).map(Repair.MakeUp::new)));
        } else if (Math.abs(moved) >= SEEN) {
            Map<String, Value> values = Map.of("by", height(Math.abs(moved)), "line", Value.above(woven, place, line));
            found.add(about(moved > 0 ? Code.COMES_HIGHER : Code.COMES_LOWER, place, last, values));
        }
    }

    private int woven(Place place) {
        return measured(place)
                .map(block -> woven.end(place).blocks().indexOf(block) + 1)
                .orElse(0);
    }

    private static Map<String, Value> hem(EndPlan now, EndPlan planned, Optional<MakingUp.Made> made) {
        Map<String, Value> values = new HashMap<>(Map.of(
                "by", height(Math.abs(depth(now) - depth(planned))),
                "depth", height(depth(now)),
                "planned", height(depth(planned))));
        made.ifPresent(picks -> values.putAll(Map.of(
                "picks", new Value.OfNumber(Math.abs(picks.more()), Value.Grain.COUNT),
                "band", new Value.OfBlock(picks.band().block()),
                "after", height(depth(now) + picks.gain()))));
        return values;
    }

    private static Finding about(Code code, Place place, BlockPlan block, Map<String, Value> values) {
        return Finding.of(code, values).at(place).about(block.block());
    }

    private static double depth(EndPlan end) {
        return end.hem().filter(Hem::folds).map(Hem::depth).orElse(0.0);
    }

    /** What was woven may leave too little room, where there was enough. */
    private void room() {
        double stop =
                first.budget().stopLine() - (woven.top().height() - first.top().height());
        double over = woven.budget().designEnds() - stop;
        if (over < SEEN || first.budget().left() < -SEEN) {
            return;
        }
        found.add(Finding.of(
                        Code.NO_ROOM_LEFT, Map.of("short", height(over), "stop", Value.above(woven, Place.TOP, stop)))
                .mendedBy(lower(over)));
    }

    /** A design as much shorter, while it isn't woven yet; between loops the plan's own height is given. */
    private Optional<Repair> lower(double over) {
        Budget budget = woven.budget();
        boolean given = budget.closed() || measures.height(Measures.DESIGN).isPresent();
        Length height = piece.design().height();
        return given
                ? Optional.empty()
                : new RuleLengths(piece.habits().units())
                        .down(height.mm() - over / (1 + piece.design().relaxing()))
                        .map(Repair.DesignHeight::new);
    }
}
