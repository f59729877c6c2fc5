package thrumwright.commandline;

import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import thrumwright.plan.Finding;
import thrumwright.plan.Plan;
import thrumwright.plan.Severity;

@Command(
        name = "check",
        description = "Looks a piece over. Exit code 1 if it has a problem.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @ParentCommand
    private Commands commands;

    @Parameters(index = "0", paramLabel = "FILE", description = "The piece; “-” for the standard input.")
    private String file;

    @Option(names = "--strict", description = "Exit code 1 for a caution too.")
    private boolean strict;

    @Override
    public Integer call() throws Exception {
        Plan plan = Plan.of(Files.piece(file, commands.console()).piece());
        for (Finding finding : plan.findings()) {
            String severity = finding.severity().name().toLowerCase(Locale.ROOT);
            commands.console().out().println(severity + ": " + finding.sentence());
        }
        boolean bad = plan.has(Severity.PROBLEM) || strict && plan.has(Severity.CAUTION);
        return bad ? Commands.PROBLEM_FOUND : Commands.DONE;
    }
}
