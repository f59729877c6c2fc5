package thrumwright.plan.finding;

import static thrumwright.plan.finding.Value.fine;
import static thrumwright.plan.finding.Value.height;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Row;
import thrumwright.block.Shed;
import thrumwright.block.SpreadHeader;
import thrumwright.block.WarpLoops;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.finding.Value.OfLoops;
import thrumwright.plan.finding.Value.OfMeeting;
import thrumwright.plan.finding.Value.OfYarn;
import thrumwright.yarn.Yarn;

/** Looks one end over. */
final class EndFinder {
    /** Loops that stand out farther than this can't be covered by easing the last picks outwards, mm (common practice, no source). */
    private static final double LOOSE = 5;

    /** A header that fills less of the way from end to end parts them too little (common practice, no source). */
    private static final double SPREADS = 0.7;

    private final Piece piece;
    private final EndPlan end;
    private final RepairFinder repairs;
    private final Fitting fitting;
    private final List<Finding> found = new ArrayList<>();

    EndFinder(Plan plan, Place place) {
        this.piece = plan.piece();
        this.end = plan.end(place);
        this.repairs = new RepairFinder(plan, end);
        this.fitting = new Fitting(plan);
    }

    List<Finding> all() {
        if (end.blocks().isEmpty()) {
            here(Code.NOTHING_HERE, repairs.nothingHere());
            return found;
        }
        for (BlockPlan block : end.blocks()) {
            block.work().ifPresent(work -> work(block, work));
        }
        sheds();
        if (closed()) {
            loops();
        } else {
            protection();
        }
        end.hem().ifPresent(hem -> found.addAll(new HemFinder(piece, end, hem, repairs).all()));
        end.finish().ifPresent(this::finish);
        return found;
    }

    private void work(BlockPlan block, Work work) {
        if (work.block().fillsSpaces() && work.setting().jammed()) {
            about(Code.TOO_THICK, block.block(), thickness(work));
        }
        if (work.block().tied() && work.setting().posts().isEmpty()) {
            about(Code.NO_POSTS, block.block(), Map.of());
        }
        if (work.block() instanceof SpreadHeader
                && work.setting().gauge() < SPREADS * work.setting().spacing()) {
            about(Code.SPREADS_LITTLE, block.block(), thickness(work));
        }
        Yarn stripe = piece.stripe(end.place());
        if (end.hem().isPresent()
                && work.block().showsBesideDesign()
                && !work.yarn().colour().equals(stripe.colour())) {
            about(
                    Code.OTHER_COLOUR,
                    block.block(),
                    Map.of("yarn", new OfYarn(work.yarn()), "stripe", new OfYarn(stripe)),
                    repairs.stripeYarn(block));
        }
    }

    private static Map<String, Value> thickness(Work work) {
        return Map.of(
                "yarn", new OfYarn(work.yarn()),
                "gauge", fine(work.setting().gauge()),
                "space", fine(work.setting().spacing()));
    }

    /** Two neighbouring plain picks in one shed, with nothing woven between them, would lie as one. */
    private void sheds() {
        Optional<Shed> last = end.place() == Place.TOP ? piece.design().lastShed() : Optional.empty();
        for (BlockPlan block : end.blocks()) {
            // what lies on the cloth parts no picks
            if (block.work().filter(Work::stands).isEmpty()) {
                continue;
            }
            List<Row> rows = block.work().orElseThrow().rows();
            Optional<Shed> first = rows.get(0).shed();
            if (first.isPresent() && first.equals(last)) {
                about(Code.SAME_SHED, block.block(), Map.of("meets", meeting(rows.get(0))), repairs.sameShed(block));
            }
            last = rows.get(rows.size() - 1).shed();
        }
    }

    private OfMeeting meeting(Row pick) {
        return new OfMeeting(pick.meets(piece.warp().ends()).orElseThrow(), pick.from());
    }

    private void protection() {
        boolean faced = end.hem().flatMap(Hem::band).isPresent();
        List<BlockPlan> there = faced ? end.blocks() : end.hemSide();
        if (there.stream().noneMatch(block -> block.stays() && block.block().holds())) {
            here(Code.NOTHING_HOLDS, repairs.nothingHolds());
        }
        if (!any(RepairFinder::waste)) {
            here(Code.NO_WASTE, repairs.noWaste());
        }
    }

    private boolean closed() {
        return any(block -> block.finish().filter(EdgeFinish::closed).isPresent());
    }

    private boolean any(Predicate<Block> wanted) {
        return end.blocks().stream().anyMatch(block -> wanted.test(block.block()));
    }

    /** A closed edge has no warp ends to work with, and needs nothing that comes out. */
    private void loops() {
        for (BlockPlan block : end.blocks()) {
            if (block.block() instanceof WarpLoops loops) {
                standingOut(loops);
            } else if (block.block().finish().isPresent()) {
                about(Code.FINISH_ON_LOOPS, block.block(), Map.of());
            } else if (block.comesOut()) {
                about(Code.OUT_OF_LOOPS, block.block(), Map.of("height", height(block.height())));
            }
        }
    }

    private void standingOut(WarpLoops loops) {
        double out = loops.standOut(piece.setting(piece.warpYarn()));
        if (out > LOOSE) {
            about(Code.LOOPS_STAND_OUT, loops, Map.of("out", fine(out), "held", new OfLoops(loops)));
        }
    }

    private void finish(Finish finish) {
        List<EdgeFinish> finishes = end.blocks().stream()
                .flatMap(block -> block.block().finish().stream())
                .toList();
        // of loops and something else the loops speak
        boolean alike = !closed() || finishes.stream().allMatch(EdgeFinish::closed);
        if (finishes.size() > 1 && alike) {
            about(Code.SEVERAL_FINISHES, finish.block(), Map.of(), repairs.severalFinishes(finish));
        }
        parts(finish);
        end.hem().ifPresent(hem -> inside(finish, hem));
        double hanging = finish.block().length().map(Length::mm).orElse(0.0);
        finish.wrapping()
                .filter(wrapping -> wrapping.height() >= hanging)
                .ifPresent(wrapping -> about(
                        Code.WRAPPING_TOO_HIGH,
                        finish.block(),
                        Map.of("height", height(wrapping.height()), "hanging", height(hanging))));
        if (end.loops().isEmpty() && finish.free() < finish.needed()) {
            about(
                    finish.needed() > EdgeFinish.HANDS ? Code.FREE_WARP_SHORT : Code.FREE_WARP_SHORT_FOR_HANDS,
                    finish.block(),
                    fitting.fringe(finish),
                    fitting.fringes());
        }
    }

    /** A hem hides what lies between its outer edge and the fold, or in its first turn. */
    private void inside(Finish finish, Hem hem) {
        double hidden = hem.firstTurn().orElse(hem.cloth());
        double reach = finish.block().beyond(piece.setting(piece.warpYarn()));
        if (hem.folds() && hem.band().isEmpty() && finish.block().hangs() && reach > hidden) {
            about(Code.KNOTS_OUT_OF_HEM, finish.block(), Map.of("reach", height(reach), "hidden", height(hidden)));
        }
    }

    /** A plait of three needs three ends in every group. */
    private void parts(Finish finish) {
        int least = finish.block().leastPerGroup();
        int smallest = Collections.min(finish.groups());
        if (smallest < least) {
            about(Code.GROUP_TOO_SMALL, finish.block(), Map.of("ends", count(smallest), "least", count(least)));
        }
    }

    private static Value count(int number) {
        return new Value.OfNumber(number, Value.Grain.COUNT);
    }

    private void about(Code code, Block block, Map<String, Value> values) {
        about(code, block, values, Optional.empty());
    }

    private void about(Code code, Block block, Map<String, Value> values, Optional<Repair> repair) {
        found.add(Finding.of(code, values).at(end.place()).about(block).mendedBy(repair));
    }

    private void here(Code code, Optional<Repair> repair) {
        found.add(Finding.of(code, Map.of()).at(end.place()).mendedBy(repair));
    }
}
