package thrumwright.plan.finding;

import static thrumwright.plan.finding.Value.fine;
import static thrumwright.plan.finding.Value.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.Passing;
import thrumwright.block.Side;
import thrumwright.measure.Length;
import thrumwright.piece.Habits;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Budget;
import thrumwright.plan.ClosingShed;
import thrumwright.plan.EndPlan;
import thrumwright.plan.HangingStrip;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.comparison.Front;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.finding.Value.Grain;
import thrumwright.plan.finding.Value.OfMeeting;
import thrumwright.plan.finding.Value.OfNumber;
import thrumwright.plan.finding.Value.OfSide;
import thrumwright.plan.finding.Value.OfSupport;
import thrumwright.plan.finding.Value.OfYarn;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Usage;
import thrumwright.yarn.Yarn;

/** Looks over what concerns the piece as a whole. */
final class PieceFinder {
    /** A cloth that draws in by more than this strains its edge ends (common practice, no source). */
    private static final double MUCH_DRAW_IN = 0.1;

    private final Plan plan;
    private final Piece piece;
    private final List<Finding> found = new ArrayList<>();

    PieceFinder(Plan plan) {
        this.plan = plan;
        this.piece = plan.piece();
    }

    List<Finding> all() {
        fit(plan.budget());
        hemsAlike();
        plan.top().hem().filter(Hem::folds).ifPresent(this::strip);
        found.addAll(stock(plan.totals(), piece.design().stripes().told()));
        overfull();
        lastPick();
        closingShed();
        reference();
        wovenWidth();
        for (Yarn yarn : piece.yarns()) {
            yarn.alsoTold().filter(also -> !yarn.measuresAgree()).ifPresent(also -> measuresDiffer(yarn, also));
            piece.measuredEase(yarn)
                    .filter(ease -> ease < Piece.LEAST_EASE || ease > Piece.MOST_EASE)
                    .ifPresent(ease -> usedUnlikely(yarn, yarn.usage().orElseThrow()));
        }
        return found;
    }

    private void fit(Budget budget) {
        double left = budget.left();
        if (left >= -0.05) {
            return;
        }
        Fitting fitting = new Fitting(plan);
        Finding finding = budget.closed()
                ? Finding.of(
                        Code.LOOPS_DO_NOT_FIT,
                        Map.of("short", height(-left), "stand", Value.above(plan, Place.TOP, budget.open() - left)))
                : Finding.of(Code.DOES_NOT_FIT, fitting.shares());
        found.add(finding.mendedBy(fitting.fitting()));
    }

    private void hemsAlike() {
        Optional<Hem> start = foldedHem(plan.start());
        Optional<Hem> top = foldedHem(plan.top());
        if (start.isEmpty() || top.isEmpty()) {
            return;
        }
        double below = start.get().depth();
        double above = top.get().depth();
        if (Math.abs(below - above) >= Front.SAME_DEPTH) {
            boolean bar = start.get().sleeve().isPresent() != top.get().sleeve().isPresent();
            Map<String, Value> values = Map.of("below", height(below), "above", height(above));
            found.add(
                    bar
                            ? Finding.of(Code.HEMS_DIFFER_FOR_A_BAR, values)
                            : Finding.of(Code.HEMS_DIFFER, values)
                                    .mendedBy(new RepairFinder(plan, plan.top()).hemsAlike(below, above)));
        }
    }

    /** What is to hang and has nothing that slides in is offered a strip. */
    private void strip(Hem hem) {
        HangingStrip strip = plan.strip();
        boolean offered = piece.madeFor().equals(Optional.of(MadeFor.HUNG))
                && hem.sleeve().isEmpty();
        if (!offered || strip.fits(hem)) {
            return;
        }
        Block fold = plan.top().block(hem.blockId()).orElseThrow().block();
        RepairFinder repairs = new RepairFinder(plan, plan.top());
        Optional<Repair> repair = hem.band().isPresent()
                ? repairs.bandWidth(fold, strip.depth())
                : repairs.hemDepth(strip.depth() - hem.depth());
        Map<String, Value> values = Map.of(
                "support", new OfSupport(strip.support()),
                "needed", height(strip.depth()),
                "depth", height(hem.room()));
        found.add(Finding.of(Code.HEM_SHALLOW_FOR_A_STRIP, values)
                .at(Place.TOP)
                .about(fold)
                .mendedBy(repair));
    }

    /** How deep a band lies can't be seen from the front, nor mended by picks. */
    private static Optional<Hem> foldedHem(EndPlan end) {
        return end.hem().filter(hem -> hem.band().isEmpty());
    }

    /**
     * What there isn't enough of.
     *
     * @param told whether the weaver told which yarns the design takes; what is only assumed is no reason to buy
     */
    static List<Finding> stock(List<YarnTotal> totals, boolean told) {
        List<Finding> found = new ArrayList<>();
        for (YarnTotal total : totals) {
            double stock = total.yarn().stock().map(Length::mm).orElse(Double.POSITIVE_INFINITY);
            double needed = told ? total.length() : total.besideDesign();
            if (stock < needed) {
                found.add(Finding.of(
                        Code.STOCK_SHORT,
                        Map.of(
                                "yarn", new OfYarn(total.yarn()),
                                "needed", new OfNumber(needed, Grain.TOTAL),
                                "stock", new OfNumber(stock, Grain.TOTAL),
                                "short", new OfNumber(needed - stock, Grain.TOTAL))));
            }
        }
        return found;
    }

    /** The design has become lower than what was told of its yarns. */
    private void overfull() {
        if (piece.design().overfull()) {
            double share =
                    piece.design().stripes().share(piece.design().height().mm());
            found.add(Finding.of(Code.DESIGN_OVERFULL, Map.of("share", new OfNumber(share, Grain.SHARE))));
        }
    }

    private void lastPick() {
        boolean known = piece.design().lastShed().isPresent()
                && piece.design().lastSide().isPresent();
        if (!known && !plan.top().blocks().isEmpty()) {
            Side side = plan.afterDesign().side();
            Passing passing = plan.afterDesign()
                    .lastShed()
                    .orElseThrow()
                    .meets(side.other(), piece.warp().ends());
            found.add(Finding.of(
                    Code.LAST_PICK_ASSUMED,
                    Map.of("meets", new OfMeeting(passing, side.other()), "side", new OfSide(side))));
        }
    }

    /** Towards loops at the top there is less and less room to weave. */
    private void closingShed() {
        ClosingShed shed = plan.closingShed();
        plan.top().loops().filter(loops -> plan.linked() < shed.hands()).ifPresent(loops -> {
            Map<String, Value> values = Map.of(
                    "hands", height(shed.hands() - plan.linked()),
                    "opening", height(ClosingShed.BUTTERFLY),
                    "needle", height(Math.max(0, shed.needle() - plan.linked())),
                    "thin", height(ClosingShed.opening(shed.needle())));
            found.add(Finding.of(Code.SHED_CLOSES, values).at(Place.TOP).about(loops));
        });
    }

    private void reference() {
        if (piece.habits().widthsOf() == Habits.WidthsOf.LOOM
                && piece.loom().uprights().isEmpty()) {
            found.add(Finding.of(Code.WIDTHS_OF_WARP, Map.of()).mendedBy(Optional.of(new Repair.WidthsOfWarp())));
        }
    }

    /** What was measured on this piece and can't be right, or isn't as it should be. */
    private void wovenWidth() {
        piece.warp().woven().ifPresent(woven -> {
            Map<String, Value> values = Map.of(
                    "woven", new OfNumber(woven.mm(), Grain.CUT),
                    "nominal", new OfNumber(piece.warp().nominalWidth(), Grain.CUT),
                    "share", new OfNumber(piece.warp().drawIn(), Grain.SHARE));
            if (!piece.warp().wovenLikely()) {
                found.add(Finding.of(Code.WOVEN_WIDTH_UNLIKELY, values));
            } else if (piece.warp().drawIn() > MUCH_DRAW_IN) {
                found.add(Finding.of(Code.DRAWS_IN, values));
            }
        });
    }

    private void measuresDiffer(Yarn yarn, Thickness also) {
        found.add(Finding.of(
                Code.MEASURES_DIFFER,
                Map.of(
                        "yarn", new OfYarn(yarn),
                        "one", fine(yarn.diameter()),
                        "other", fine(also.diameter(yarn.fibre(), yarn.firmness())))));
    }

    private void usedUnlikely(Yarn yarn, Usage usage) {
        found.add(Finding.of(
                Code.YARN_USED_UNLIKELY,
                Map.of(
                        "yarn", new OfYarn(yarn),
                        "picks", new OfNumber(usage.picks(), Grain.COUNT),
                        "used", new OfNumber(usage.length().mm(), Grain.CUT),
                        "worked", new OfNumber(piece.setting(yarn).plain(usage.picks()), Grain.CUT))));
    }
}
