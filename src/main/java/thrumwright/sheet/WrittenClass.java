package thrumwright.sheet;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;

/**
 * The lists of a class and the sheet of each of its looms, each written once, when it is first asked for; of looms with the same plan all
 * that is the same is written once.
 */
public final class WrittenClass {
    private final ClassPlan plan;
    private final Locale locale;
    private final Map<Integer, StepSheet> looms = new HashMap<>();
    private final Map<Plan, StepSheet> first = new IdentityHashMap<>();
    private final Map<Plan, String> works = new IdentityHashMap<>();
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
        return looms.computeIfAbsent(member, none -> written(member));
    }

    private StepSheet written(int member) {
        Plan own = plan.plans().get(member);
        String name = plan.set().members().get(member).name();
        StepSheet known = first.get(own);
        if (known != null) {
            return new SheetWriter(own, Optional.of(name), locale).like(known);
        }
        StepSheet sheet = StepSheet.of(own, name, locale);
        first.put(own, sheet);
        return sheet;
    }

    /**
     * A loom's sheet as plain text; lines end with \n and are at most 80 characters long.
     *
     * @param member from 0
     */
    public String text(int member) {
        StepSheet sheet = loom(member);
        String work = works.computeIfAbsent(
                plan.plans().get(member), none -> PlainText.work(sheet, Phrases.of("thrumwright.sheet.steps", locale)));
        return PlainText.head(sheet) + work;
    }
}
