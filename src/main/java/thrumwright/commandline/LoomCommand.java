package thrumwright.commandline;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import thrumwright.drawing.Palette;
import thrumwright.output.html.LoomPage;
import thrumwright.plan.Plan;

@Command(name = "loom", mixinStandardHelpOptions = true)
final class LoomCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Mixin
    private final InputFile file = new InputFile();

    @Option(
            names = {"-o", "--to"},
            paramLabel = "NAME",
            defaultValue = "-")
    private String to;

    LoomCommand(RootCommand commands) {
        this.commands = commands;
    }

    @Override
    public Integer call() throws Exception {
        if (!(file.load(commands.console()) instanceof Loaded.OfPiece piece)) {
            throw new ParameterException(commands.asked("loom"), Said.of("loom.class", "name", file.name()));
        }
        Plan plan = piece.plan();
        String page = LoomPage.of(plan, Palette.onPaper(), Locale.UK);
        InAndOut.write(to, commands.console(), out -> out.write(page.getBytes(StandardCharsets.UTF_8)));
        return RootCommand.DONE;
    }
}
