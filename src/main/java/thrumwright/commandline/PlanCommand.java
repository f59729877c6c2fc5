package thrumwright.commandline;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import thrumwright.plan.Plan;
import thrumwright.store.JsonText;

@Command(
        name = "plan",
        description = "Shows what follows from a piece: rows, heights, cuts, hems, warp.",
        mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
    @ParentCommand
    private Commands commands;

    @Parameters(index = "0", paramLabel = "FILE", description = "The piece; “-” for the standard input.")
    private String file;

    @Option(names = "--json", description = "As JSON for other programs; lengths in mm, masses in g.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        Plan plan = Plan.of(Files.piece(file, commands.console()).piece());
        String text = json ? JsonText.of(PlanJson.of(plan)) : PlanText.of(plan);
        commands.console().out().print(text);
        return Commands.DONE;
    }
}
