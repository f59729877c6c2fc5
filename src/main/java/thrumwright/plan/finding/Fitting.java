package thrumwright.plan.finding;

import static thrumwright.plan.finding.Value.height;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.EdgeFinish;
import thrumwright.measure.Length;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.plan.Budget;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Plan;
import thrumwright.plan.UsualRoom;

/** Where the height of a warp goes, and what gives some of it back. */
final class Fitting {
    private final Plan plan;
    private final Piece piece;
    private final Budget budget;
    private final RuleLengths lengths;

    Fitting(Plan plan) {
        this.plan = plan;
        this.piece = plan.piece();
        this.budget = plan.budget();
        this.lengths = new RuleLengths(piece.habits().units());
    }

    /** What a piece that is too high is made of. */
    Map<String, Value> shares() {
        return Map.of(
                "short", height(-budget.left()),
                "open", height(budget.open()),
                "below", height(budget.clearance()),
                "start", height(budget.start()),
                "design", height(budget.design()),
                "top", height(budget.top()),
                "above", height(budget.workingRoom()));
    }

    /**
     * What makes a piece fit that is too high: first what takes nothing from it. No less is left free than is usual, and
     * only what the weaver asked for is taken back.
     */
    List<Repair> fitting() {
        double tooHigh = -budget.left();
        List<Repair> repairs = new ArrayList<>();
        below(tooHigh).ifPresent(repairs::add);
        above(tooHigh).ifPresent(repairs::add);
        if (repairs.isEmpty()) {
            usual(tooHigh).ifPresent(repairs::add);
        }
        design(tooHigh).map(Repair.DesignHeight::new).ifPresent(repairs::add);
        return repairs;
    }

    private Optional<Repair> below(double tooHigh) {
        UsualRoom usual = plan.room().usual();
        return piece.loom()
                .clearance()
                .filter(free -> free.mm() - tooHigh >= usual.below().mm())
                .flatMap(free -> lengths.down(free.mm() - tooHigh))
                .map(Repair.Clearance::new);
    }

    private Optional<Repair> above(double tooHigh) {
        UsualRoom usual = plan.room().usual();
        return piece.loom()
                .workingRoom()
                .filter(free ->
                        !budget.closed() && free.mm() - tooHigh >= usual.above().mm())
                .flatMap(free -> lengths.down(free.mm() - tooHigh))
                .map(Repair.WorkingRoom::new);
    }

    /** Both as usual, where neither is enough by itself. */
    private Optional<Repair> usual(double tooHigh) {
        Loom loom = piece.loom();
        UsualRoom usual = plan.room().usual();
        double gained =
                more(loom.clearance(), usual.below()) + (budget.closed() ? 0 : more(loom.workingRoom(), usual.above()));
        return gained >= tooHigh
                ? Optional.of(
                        new Repair.AsUsual(usual.below().mm(), usual.above().mm()))
                : Optional.empty();
    }

    private static double more(Optional<Length> asked, UsualRoom.Free usual) {
        return asked.map(free -> Math.max(0, free.mm() - usual.mm())).orElse(0.0);
    }

    /** A design lower by that much on the loom, mm; empty if nothing is left of it. */
    private Optional<Length> design(double less) {
        return lengths.down(
                piece.design().height().mm() - less / (1 + piece.design().relaxing()));
    }

    /** What fringes at both ends ask for, with the highest design that leaves it. */
    Map<String, Value> fringe(Finish finish) {
        Map<String, Value> values = new HashMap<>(Map.of(
                "needed", height(finish.needed()),
                "hands", height(EdgeFinish.HANDS),
                "free", height(Math.max(0, finish.free())),
                "more", height(finish.needed() - finish.free())));
        design(-spare(rise().orElse(0.0))).ifPresent(design -> values.put("design", height(design.mm())));
        return values;
    }

    /** The start higher where its ends are too short, and the design lower where the top's then are. */
    Optional<Repair> fringes() {
        Optional<Length> begin = rise().filter(rise -> rise > 0).flatMap(rise -> lengths.up(budget.clearance() + rise));
        double spare = spare(
                begin.map(clearance -> clearance.mm() - budget.clearance()).orElse(0.0));
        if (spare >= 0) {
            return begin.map(Repair.Clearance::new);
        }
        return design(-spare)
                .map(height -> begin.<Repair>map(clearance -> new Repair.Fringes(clearance, height))
                        .orElseGet(() -> new Repair.DesignHeight(height)));
    }

    /** By how much the start must begin higher, mm, 0 or more; empty where the warp goes round and that changes nothing. */
    private Optional<Double> rise() {
        return plan.room().endless() ? Optional.empty() : Optional.of(Math.max(0, lacking(plan.start())));
    }

    /** How much higher the design could be on the loom, mm; below 0, how much lower it must be. */
    private double spare(double rise) {
        double spare = Math.min(budget.left(), -lacking(plan.top()));
        if (rise().isEmpty()) {
            spare = Math.min(spare, -lacking(plan.start()));
        }
        return spare - rise;
    }

    /** How much free warp an end lacks, mm; far below 0 where nothing is asked. */
    private static double lacking(EndPlan end) {
        return end.loops().isPresent()
                ? Double.NEGATIVE_INFINITY
                : end.finish().map(finish -> finish.needed() - finish.free()).orElse(Double.NEGATIVE_INFINITY);
    }
}
