package thrumwright.plan.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Finding.Code;

/**
 * What the weaver should know of a plan.
 *
 * @param all the worst first
 */
public record Findings(List<Finding> all) {
    private static final Set<Code> OF_EACH_END =
            Set.of(Code.FREE_WARP_SHORT, Code.FREE_WARP_SHORT_FOR_HANDS, Code.OTHER_COLOUR, Code.SAME_SHED);

    public Findings {
        all = List.copyOf(all);
    }

    public static Findings of(Plan plan) {
        List<Finding> found = new ArrayList<>(new EndFinder(plan, Place.START).all());
        addTop(found, new EndFinder(plan, Place.TOP).all(), plan.piece().topFollows());
        found.addAll(new PieceFinder(plan).all());
        found.addAll(GrowthFinder.all(plan.piece()));
        found.replaceAll(finding -> MeantFinder.of(plan, finding));
        found.sort(Comparator.comparing(Finding::severity));
        return new Findings(found);
    }

    /** Of a top that follows the start, what was already said of the start isn't said again. */
    private static void addTop(List<Finding> found, List<Finding> ofTop, boolean follows) {
        Set<String> said = new HashSet<>();
        found.forEach(finding -> said.add(key(finding)));
        for (Finding finding : ofTop) {
            boolean again = follows && !OF_EACH_END.contains(finding.code()) && said.contains(key(finding));
            if (!again) {
                found.add(finding);
                said.add(key(finding));
            }
        }
    }

    /** What it says and of which block. */
    private static String key(Finding finding) {
        return finding.code() + " " + finding.blockId().orElse("");
    }

    public boolean has(Severity severity) {
        return all.stream().anyMatch(finding -> finding.severity() == severity);
    }
}
