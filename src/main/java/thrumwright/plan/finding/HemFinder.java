package thrumwright.plan.finding;

import static thrumwright.plan.finding.Value.fine;
import static thrumwright.plan.finding.Value.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.PlainBand.Purpose;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Mitre;
import thrumwright.plan.SewnBand;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.finding.Value.OfSupport;

/** Looks a hem over. */
final class HemFinder {
    /** A hem shallower than this won't lie flat, mm (common practice, no source). */
    private static final double SHALLOW = 10;

    private final Piece piece;
    private final EndPlan end;
    private final Hem hem;
    private final Block fold;
    private final RepairFinder repairs;
    private final List<Finding> found = new ArrayList<>();

    HemFinder(Piece piece, EndPlan end, Hem hem, RepairFinder repairs) {
        this.piece = piece;
        this.end = end;
        this.hem = hem;
        this.fold = end.block(hem.blockId()).orElseThrow().block();
        this.repairs = repairs;
    }

    List<Finding> all() {
        long folds =
                end.blocks().stream().filter(block -> block.fold().isPresent()).count();
        if (folds > 1) {
            add(Code.SEVERAL_FOLDS, Map.of(), repairs.severalFolds(hem));
        }
        if (hem.band().isPresent()) {
            band(hem.band().get());
        } else {
            cloth();
        }
        return found;
    }

    private void cloth() {
        if (hem.cloth() <= 0) {
            add(Code.HEM_EMPTY, Map.of(), Optional.empty());
            return;
        }
        if (end.hemSide().stream().noneMatch(block -> RepairFinder.band(block.block(), Purpose.STIFF))) {
            add(Code.NO_STIFF_BAND, Map.of(), repairs.noStiffBand());
        }
        depth();
        hem.firstTurn().filter(turn -> turn > hem.cloth() / 2).ifPresent(this::firstTurn);
        hem.sleeve().filter(sleeve -> hem.depth() < sleeve.depth()).ifPresent(this::sleeve);
        hem.mitre().ifPresent(this::mitre);
    }

    private void depth() {
        double depth = hem.depth();
        double deepest = deepest();
        // where rounding would hide on which side of a limit it lies
        boolean near = Math.abs(depth - SHALLOW) < 0.5 || Math.abs(depth - deepest) < 0.5;
        Map<String, Value> values =
                Map.of("depth", near ? fine(depth) : height(depth), "least", height(SHALLOW), "most", height(deepest));
        if (depth < SHALLOW) {
            add(Code.HEM_SHALLOW, values, repairs.hemDepth(SHALLOW - depth));
        } else if (depth > deepest && !sample()) {
            add(Code.HEM_DEEP, values, repairs.hemDepth(deepest - depth));
        }
    }

    /** A sample has hardly a design that a hem could show through. */
    private boolean sample() {
        return piece.madeFor().equals(Optional.of(MadeFor.SAMPLE));
    }

    /** The deepest that a hem may be, mm: a third of the design. */
    private double deepest() {
        return piece.design().height().mm() / 3;
    }

    private void firstTurn(double turn) {
        add(
                Code.FIRST_TURN_TOO_DEEP,
                Map.of("turn", height(turn), "cloth", height(hem.cloth()), "most", height(hem.cloth() / 2)),
                repairs.firstTurn(hem));
    }

    private void sleeve(Hem.Sleeve sleeve) {
        double more = sleeve.depth() - hem.depth();
        add(
                Code.SLEEVE_TOO_NARROW,
                Map.of(
                        "support", new OfSupport(sleeve.support()),
                        "needed", height(sleeve.depth()),
                        "depth", height(hem.depth()),
                        "more", height(more)),
                repairs.hemDepth(more));
    }

    private void mitre(Mitre mitre) {
        double width = piece.warp().clothWidth();
        if (mitre.between(width) < 0) {
            add(
                    Code.MITRES_MEET,
                    Map.of("leg", height(mitre.leg()), "width", height(width)),
                    repairs.hemDepth(mitre.between(width) / 2));
        }
    }

    private void band(SewnBand band) {
        // to cover all and to take what it is to take
        double least =
                Math.max(band.needed(), hem.sleeve().map(Hem.Sleeve::depth).orElse(0.0));
        Map<String, Value> values = Map.of(
                "width", height(band.width()),
                "turned", height(band.turned()),
                "ends", height(band.trimmed() ? SewnBand.SHORTEST : band.ends()),
                "beyond", height(SewnBand.BEYOND),
                "needed", height(band.needed()),
                "depth", height(band.depth()),
                "most", height(deepest()));
        if (!band.covers()) {
            add(Code.BAND_TOO_NARROW, values, repairs.bandWidth(fold, least));
        } else if (band.depth() > deepest()) {
            add(Code.BAND_TOO_WIDE, values, Optional.empty());
        }
        hem.sleeve()
                .filter(sleeve -> hem.room() < sleeve.depth())
                .ifPresent(sleeve -> add(
                        Code.BAND_TOO_NARROW_FOR_SUPPORT,
                        Map.of(
                                "support", new OfSupport(sleeve.support()),
                                "needed", height(sleeve.depth()),
                                "width", height(band.width())),
                        repairs.bandWidth(fold, least)));
    }

    private void add(Code code, Map<String, Value> values, Optional<Repair> repair) {
        found.add(Finding.of(code, values).at(end.place()).about(fold).mendedBy(repair));
    }
}
