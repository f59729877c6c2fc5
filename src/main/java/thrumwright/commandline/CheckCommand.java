package thrumwright.commandline;

import java.util.Locale;
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

@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Mixin
    private final InputFile file = new InputFile();

    @Option(names = "--strict")
    private boolean strict;

    CheckCommand(RootCommand commands) {
        this.commands = commands;
    }

    @Override
    public Integer call() throws Exception {
        Loaded work = file.load(commands.console());
        return work instanceof Loaded.OfClass some ? told(some.plan()) : told(((Loaded.OfPiece) work).plan());
    }

    private int told(Plan plan) {
        Findings findings = Findings.of(plan);
        FindingWords words = FindingWords.of(plan.piece(), Locale.UK);
        findings.all().forEach(finding -> tell(finding.severity(), words.say(finding)));
        return code(findings.has(Severity.PROBLEM), findings.has(Severity.CAUTION));
    }

    /** Each finding with the names of those whom it is about. */
    private int told(ClassPlan plan) {
        MemberNames names = MemberNames.of(plan.set(), Locale.UK);
        FindingWords words = FindingWords.of(plan.set().piece(), Locale.UK);
        for (ClassFinding each : words.of(plan)) {
            Severity severity = each.finding().severity();
            names.said(each.members(), words.say(each.finding())).forEach(said -> tell(severity, said));
        }
        return code(plan.has(Severity.PROBLEM), plan.has(Severity.CAUTION));
    }

    private void tell(Severity severity, String sentence) {
        commands.console().out().println(Said.finding(severity, sentence));
    }

    private int code(boolean problem, boolean caution) {
        return problem || strict && caution ? RootCommand.PROBLEM_FOUND : RootCommand.DONE;
    }
}
