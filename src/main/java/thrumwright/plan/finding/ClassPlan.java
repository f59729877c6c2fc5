package thrumwright.plan.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.words.Words;
import thrumwright.yarn.Yarn;

/**
 * Everything that follows from a class.
 *
 * @param plans one for each member, in their order
 * @param totals what all looms take together, in the order of the yarns, those used only; what there is of a yarn is
 *     there once for the whole class
 * @param findings the worst first; what is said of several members alike is said once
 */
public record ClassPlan(ClassSet set, List<Plan> plans, List<YarnTotal> totals, List<ClassFinding> findings) {
    public ClassPlan {
        plans = List.copyOf(plans);
        totals = List.copyOf(totals);
        findings = List.copyOf(findings);
    }

    public static ClassPlan of(ClassSet set) {
        List<Plan> plans = set.pieces().stream().map(Plan::of).toList();
        List<YarnTotal> totals = totals(set.withAllYarns(), plans);
        return new ClassPlan(set, plans, totals, findings(set.piece(), plans, totals));
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
                        each.stream().mapToDouble(YarnTotal::inEnds).sum()));
            }
        }
        return totals;
    }

    private static List<ClassFinding> findings(Piece piece, List<Plan> plans, List<YarnTotal> totals) {
        Map<Finding, List<Integer>> members = new LinkedHashMap<>();
        for (int i = 0; i < plans.size(); i++) {
            for (Finding finding : plans.get(i).findings()) {
                List<Integer> whom = members.computeIfAbsent(finding, none -> new ArrayList<>());
                if (!whom.contains(i)) {
                    whom.add(i);
                }
            }
        }
        List<ClassFinding> findings = new ArrayList<>();
        for (Finding finding : Findings.stock(totals, piece.shown(), new Words(Locale.UK))) {
            findings.add(new ClassFinding(finding, List.of()));
        }
        members.forEach((finding, whom) -> findings.add(new ClassFinding(finding, whom)));
        findings.sort(Comparator.comparing(each -> each.finding().severity()));
        return findings;
    }

    public boolean has(Severity severity) {
        return findings.stream().anyMatch(each -> each.finding().severity() == severity);
    }
}
