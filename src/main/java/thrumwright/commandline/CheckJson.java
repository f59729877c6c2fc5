package thrumwright.commandline;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.FindingWords;

/** What was found, for other programs. */
final class CheckJson {
    private static final int VERSION = 1;

    private CheckJson() {}

    /** Of all files that could be read. */
    static Map<String, Object> of(List<Map<String, Object>> files) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("thrumwrightCheck", VERSION);
        json.put("files", files);
        return json;
    }

    /** Of one file. */
    static Map<String, Object> of(String file, Loaded work) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file);
        if (work instanceof Loaded.OfClass some) {
            json.put("title", some.plan().set().title());
            json.put("findings", ClassJson.findings(some.plan()));
        } else {
            var plan = ((Loaded.OfPiece) work).plan();
            FindingWords words = FindingWords.of(plan.piece(), Locale.UK);
            json.put("title", plan.piece().title());
            json.put(
                    "findings",
                    Findings.of(plan).all().stream()
                            .map(each -> PlanJson.finding(each, words))
                            .toList());
        }
        return json;
    }
}
