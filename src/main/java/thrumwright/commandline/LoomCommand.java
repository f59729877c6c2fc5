package thrumwright.commandline;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import thrumwright.drawing.Palette;
import thrumwright.output.html.LoomPage;

@Command(name = "loom", mixinStandardHelpOptions = true)
final class LoomCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Mixin
    private final InputFile file = new InputFile();

    @Mixin
    private final Output output;

    LoomCommand(RootCommand commands) {
        this.commands = commands;
        this.output = new Output(commands, "loom");
    }

    @Override
    public Integer call() throws Exception {
        if (!(file.load(commands.console()) instanceof Loaded.OfPiece piece)) {
            throw new ParameterException(commands.asked("loom"), Said.of("loom.class", "name", file.name()));
        }
        String page = LoomPage.of(piece.plan(), Palette.onPaper(), Locale.UK);
        try (output) {
            output.take(output.to(), out -> out.write(page.getBytes(StandardCharsets.UTF_8)));
            output.keep();
        }
        return RootCommand.DONE;
    }
}
