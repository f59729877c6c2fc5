package thrumwright.commandline;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.piece.Structure;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.Structures;
import thrumwright.store.Unknown;

@Command(name = "begin", mixinStandardHelpOptions = true)
final class BeginCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Parameters(index = "0", paramLabel = "ID", descriptionKey = "id")
    private String id;

    @Option(
            names = {"-o", "--to"},
            paramLabel = "NAME",
            defaultValue = "-")
    private String to;

    @Option(names = "--title", defaultValue = "${bundle:thrumwright.begin.usual-title}")
    private String title;

    @Option(names = "--units", defaultValue = "METRIC")
    private UnitSystem units;

    BeginCommand(RootCommand commands) {
        this.commands = commands;
    }

    @Override
    public Integer call() throws Exception {
        Structures structures = Structures.with(commands.ownStructures());
        structures.problems().forEach(commands.console().err()::println);
        Structure structure = StructuresCommand.find(structures, id, commands.asked("begin"));
        Piece piece = Beginnings.with(structure, units).withTitle(title);
        String text = new PieceFile(piece, Unknown.none()).checkedText();
        if (to.equals("-")) {
            commands.console().out().print(text);
        } else if (SafeFile.begins(InAndOut.path(to), text)) {
            commands.console().err().println(Said.of("file.written", "name", to));
        } else {
            throw new ParameterException(commands.asked("begin"), Said.of("file.there", "name", to));
        }
        return RootCommand.DONE;
    }
}
