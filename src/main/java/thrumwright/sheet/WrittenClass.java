package thrumwright.sheet;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.plan.finding.ClassPlan;

/** The lists of a class and the sheet of each of its looms, each written once, when it is first asked for. */
public final class WrittenClass {
    private final ClassPlan plan;
    private final Locale locale;
    private final Map<Integer, StepSheet> looms = new HashMap<>();
    private Optional<ClassSheet> lists = Optional.empty();

    public WrittenClass(ClassPlan plan, Locale locale) {
        this.plan = plan;
        this.locale = locale;
    }

    public ClassPlan plan() {
        return plan;
    }

    public Locale locale() {
        return locale;
    }

    public ClassSheet lists() {
        if (lists.isEmpty()) {
            lists = Optional.of(new ClassSheetWriter(this).sheet());
        }
        return lists.get();
    }

    /** @param member from 0 */
    public StepSheet loom(int member) {
        return looms.computeIfAbsent(
                member,
                none -> StepSheet.of(
                        plan.plans().get(member),
                        plan.set().members().get(member).name(),
                        locale));
    }
}
