package thrumwright.plan.finding;

import java.util.List;
import java.util.Optional;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/**
 * A structure tried on a piece, before it is chosen.
 *
 * @param plan of the piece with the structure in its place
 * @param findings what there is to say of this end, and of the piece as a whole; the worst first
 */
public record StructureFit(Structure structure, Place place, Plan plan, List<Finding> findings) {
    public StructureFit {
        findings = List.copyOf(findings);
    }

    public static StructureFit of(Structure structure, Piece piece, Place place) {
        Plan plan = Plan.of(structure.on(piece, place));
        List<Finding> findings = Findings.of(plan).all().stream()
                .filter(finding -> finding.place().isEmpty() || finding.place().get() == place)
                .toList();
        return new StructureFit(structure, place, plan, findings);
    }

    public EndPlan end() {
        return plan.end(place);
    }

    /** Finished depth of its hem, mm; empty where it has none. */
    public Optional<Double> hemDepth() {
        return end().hem().filter(Hem::folds).map(Hem::depth);
    }

    /** Free warp that its warp ends need beyond the edge, mm, 0 or more; 0 where they need none. */
    public double freeWarp() {
        return end().finish().map(Finish::needed).orElse(0.0);
    }

    /**
     * Warp that it takes in all, from the design outwards, mm, 0 or more: all that is woven, or what stays with the free warp beyond
     * it, whichever is more.
     */
    public double warp() {
        double staying = place == Place.START ? end().height() - end().edge() : end().edge();
        return Math.max(end().height(), staying + freeWarp());
    }

    /** Warp cord to cut for it, mm, 0 or more. */
    public double cord() {
        return cut(plan.piece().yarn(plan.piece().cordId()));
    }

    /** Yarn of that sort to cut for it, mm, 0 or more. */
    public double cut(Yarn yarn) {
        return end().cut(yarn);
    }

    /** The yarns that it takes, in the order of the piece's. */
    public List<Yarn> yarns() {
        return plan.piece().yarns().stream().filter(yarn -> cut(yarn) > 0).toList();
    }

    /** The worst that there is to say; empty where there is nothing. */
    public Optional<Severity> worst() {
        return findings.stream().map(Finding::severity).findFirst();
    }
}
