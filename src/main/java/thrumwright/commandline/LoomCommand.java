package thrumwright.commandline;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import thrumwright.drawing.Palette;
import thrumwright.output.SheetForm;
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
        refuseOtherEndings(output.to());
        String page = LoomPage.of(piece.plan(), Palette.onPaper(), Locale.UK);
        try (output) {
            output.take(output.to(), out -> out.write(page.getBytes(StandardCharsets.UTF_8)));
            output.keep();
        }
        return RootCommand.DONE;
    }

    private void refuseOtherEndings(String name) {
        String ending = FileEnding.of(name);
        if (!ending.isEmpty()
                && SheetForm.named(name).filter(SheetForm.HTML::equals).isEmpty()) {
            throw new ParameterException(
                    commands.asked("loom"),
                    Said.of("loom.ending", Map.of("name", name, "ending", ending, "right", SheetForm.HTML.ending())));
        }
    }
}
