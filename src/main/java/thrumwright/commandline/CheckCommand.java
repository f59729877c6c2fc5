package thrumwright.commandline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassFinding;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Severity;
import thrumwright.plan.words.FindingWords;
import thrumwright.sheet.MemberNames;
import thrumwright.store.JsonText;

@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Mixin
    private final InputFiles files = new InputFiles();

    @Option(names = "--strict")
    private boolean strict;

    @Mixin
    private final AsJson json = new AsJson();

    @Mixin
    private final Quietly quiet = new Quietly();

    CheckCommand(RootCommand commands) {
        this.commands = commands;
    }

    @Override
    public Integer call() {
        List<Map<String, Object>> found = new ArrayList<>();
        int code = files.each(commands.console(), (name, work) -> {
            found.add(CheckJson.of(name, work));
            return told(name, work);
        });
        if (json.wanted() && !quiet.wanted()) {
            commands.console().out().print(JsonText.of(CheckJson.of(found)));
        }
        return code;
    }

    private int told(String file, Loaded work) {
        return work instanceof Loaded.OfClass some
                ? told(file, some.plan())
                : told(file, ((Loaded.OfPiece) work).plan());
    }

    private int told(String file, Plan plan) {
        Findings findings = Findings.of(plan);
        FindingWords words = FindingWords.of(plan.piece(), Locale.UK);
        findings.all().forEach(finding -> tell(file, finding.severity(), words.say(finding)));
        return code(findings.has(Severity.PROBLEM), findings.has(Severity.CAUTION));
    }

    /** Each finding with the names of those whom it is about. */
    private int told(String file, ClassPlan plan) {
        MemberNames names = MemberNames.of(plan.set(), Locale.UK);
        FindingWords words = FindingWords.of(plan.set().piece(), Locale.UK);
        for (ClassFinding each : words.of(plan)) {
            Severity severity = each.finding().severity();
            names.said(each.members(), words.say(each.finding())).forEach(said -> tell(file, severity, said));
        }
        return code(plan.has(Severity.PROBLEM), plan.has(Severity.CAUTION));
    }

    /** Of several files each finding says whose it is. */
    private void tell(String file, Severity severity, String sentence) {
        if (json.wanted() || quiet.wanted()) {
            return;
        }
        String said = Said.finding(severity, sentence);
        commands.console()
                .out()
                .println(files.several() ? Said.of("file.notice", Map.of("file", file, "notice", said)) : said);
    }

    private int code(boolean problem, boolean caution) {
        return problem || strict && caution ? RootCommand.PROBLEM_FOUND : RootCommand.DONE;
    }
}
