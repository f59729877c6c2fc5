package thrumwright.commandline;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.Piece;
import thrumwright.piece.Structure;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.store.Unknown;

@Command(name = "begin", mixinStandardHelpOptions = true)
final class BeginCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Parameters(index = "0", paramLabel = "ID", descriptionKey = "id")
    private String id;

    @Option(names = "--title", defaultValue = "${bundle:thrumwright.begin.usual-title}")
    private String title;

    @Option(names = "--units", defaultValue = "METRIC")
    private UnitSystem units;

    @Option(names = "--loom", paramLabel = "KIND")
    private Optional<String> loom;

    @Mixin
    private final Output output;

    BeginCommand(RootCommand commands) {
        this.commands = commands;
        this.output = new Output(commands, "begin");
    }

    @Override
    public Integer call() throws Exception {
        Structures structures = Structures.with(commands.ownStructures());
        structures.problems().forEach(commands.console().err()::println);
        Structure structure = StructuresCommand.find(structures, id, commands.asked("begin"));
        Piece usual = Beginnings.with(structure, units).withTitle(title);
        Piece piece = loom.map(key -> usual.withLoom(usual.loom().withKind(kind(key, usual))))
                .orElse(usual);
        String text = new PieceFile(piece, Unknown.none()).checkedText();
        try (output) {
            output.begin(output.to(), text);
        }
        return RootCommand.DONE;
    }

    private LoomKind kind(String key, Piece piece) {
        List<LoomKind> kinds = LoomKinds.all(piece);
        return kinds.stream()
                .filter(kind -> kind.key().equalsIgnoreCase(key))
                .findFirst()
                .orElseThrow(() -> new ParameterException(
                        commands.asked("begin"),
                        Said.of(
                                "begin.loom",
                                Map.of(
                                        "loom",
                                        key,
                                        "known",
                                        String.join(
                                                ", ",
                                                kinds.stream()
                                                        .map(LoomKind::key)
                                                        .toList())))));
    }
}
