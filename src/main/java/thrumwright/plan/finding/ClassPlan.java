package thrumwright.plan.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.plan.YarnTotal;
import thrumwright.yarn.Yarn;

/**
 * Everything that follows from a class.
 *
 * @param plans one for each member, in their order
 * @param totals what all looms take together, in the order of the yarns, those used only; what there is of a yarn is
 *     there once for the whole class
 */
public record ClassPlan(ClassSet set, List<Plan> plans, List<YarnTotal> totals) {
    public ClassPlan {
        plans = List.copyOf(plans);
        totals = List.copyOf(totals);
    }

    public static ClassPlan of(ClassSet set) {
        Map<Piece, Plan> known = new HashMap<>();
        List<Plan> plans = set.pieces().stream()
                .map(piece -> known.computeIfAbsent(piece, Plan::of))
                .toList();
        return new ClassPlan(set, plans, totals(set.withAllYarns(), plans));
    }

    private static List<YarnTotal> totals(Piece piece, List<Plan> plans) {
        List<YarnTotal> totals = new ArrayList<>();
        for (Yarn yarn : piece.yarns()) {
            List<YarnTotal> each = plans.stream()
                    .flatMap(plan -> plan.totals().stream())
                    .filter(total -> total.yarn().id().equals(yarn.id()))
                    .toList();
            if (!each.isEmpty()) {
                totals.add(new YarnTotal(
                        yarn,
                        each.stream().mapToDouble(YarnTotal::inWarp).sum(),
                        each.stream().mapToDouble(YarnTotal::inEnds).sum(),
                        each.stream().mapToDouble(YarnTotal::inDesign).sum(),
                        each.stream().mapToDouble(YarnTotal::sewnOn).sum()));
            }
        }
        return totals;
    }

    /** What a teacher should know, the worst first; what is found for several members alike is there once. */
    public List<ClassFinding> findings() {
        Map<Finding, List<Integer>> members = new LinkedHashMap<>();
        for (int i = 0; i < plans.size(); i++) {
            for (Finding finding : Findings.of(plans.get(i)).all()) {
                List<Integer> whom = members.computeIfAbsent(finding, none -> new ArrayList<>());
                if (!whom.contains(i)) {
                    whom.add(i);
                }
            }
        }
        List<ClassFinding> findings = new ArrayList<>();
        PieceFinder.stock(totals, set.piece().design().stripes().told())
                .forEach(finding -> findings.add(new ClassFinding(finding, List.of())));
        members.forEach((finding, whom) -> findings.add(new ClassFinding(finding, whom)));
        findings.sort(Comparator.comparing(each -> each.finding().severity()));
        return findings;
    }

    public boolean has(Severity severity) {
        return findings().stream().anyMatch(each -> each.finding().severity() == severity);
    }
}
