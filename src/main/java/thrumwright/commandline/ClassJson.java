package thrumwright.commandline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.finding.ClassFinding;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.words.FindingWords;

/** The plan of a class as plain values for other programs; described in docs/commandline.md. Lengths in mm, masses in g. */
final class ClassJson {
    private static final int VERSION = 1;

    private ClassJson() {}

    static Map<String, Object> of(ClassPlan plan) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("thrumwrightClassPlan", VERSION);
        json.put("title", plan.set().title());
        json.put("yarns", plan.totals().stream().map(ClassJson::total).toList());
        json.put("findings", findings(plan));
        List<Object> members = new ArrayList<>();
        for (int i = 0; i < plan.plans().size(); i++) {
            Map<String, Object> member = new LinkedHashMap<>();
            member.put("name", plan.set().members().get(i).name());
            member.put("plan", PlanJson.of(plan.plans().get(i)));
            members.add(member);
        }
        json.put("members", members);
        return json;
    }

    static List<Map<String, Object>> findings(ClassPlan plan) {
        FindingWords words = FindingWords.of(plan.set().piece(), Locale.UK);
        return words.of(plan).stream().map(each -> finding(each, words)).toList();
    }

    private static Map<String, Object> total(YarnTotal total) {
        Map<String, Object> json = PlanJson.total(total);
        Optional<Length> stock = total.yarn().stock();
        stock.ifPresent(there -> json.put("stock", there.mm()));
        return json;
    }

    /** Members by their numbers from 1; none: the class as a whole. */
    private static Map<String, Object> finding(ClassFinding each, FindingWords words) {
        Map<String, Object> json = PlanJson.finding(each.finding(), words);
        json.put("looms", each.members().stream().map(index -> index + 1).toList());
        return json;
    }
}
