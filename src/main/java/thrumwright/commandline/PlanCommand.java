package thrumwright.commandline;

import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.ClassText;
import thrumwright.store.JsonText;

@Command(name = "plan", mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Mixin
    private final InputFile file = new InputFile();

    @Option(names = "--json")
    private boolean json;

    PlanCommand(RootCommand commands) {
        this.commands = commands;
    }

    @Override
    public Integer call() throws Exception {
        Loaded work = file.load(commands.console());
        commands.console()
                .out()
                .print(work instanceof Loaded.OfClass some ? text(some.plan()) : text((Loaded.OfPiece) work));
        return RootCommand.DONE;
    }

    private String text(Loaded.OfPiece piece) {
        return json ? JsonText.of(PlanJson.of(piece.plan())) : PlanText.of(piece.plan());
    }

    private String text(ClassPlan plan) {
        return json ? JsonText.of(ClassJson.of(plan)) : ClassText.of(ClassSheet.of(plan, Locale.UK), Locale.UK);
    }
}
