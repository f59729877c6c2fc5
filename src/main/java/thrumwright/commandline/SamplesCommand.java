package thrumwright.commandline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.piece.Structure;
import thrumwright.sheet.SampleWarp;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.store.Unknown;

/** Puts several structures on one narrow warp. */
@Command(name = "samples", mixinStandardHelpOptions = true)
final class SamplesCommand implements Callable<Integer> {
    private static final String NAME = "samples";

    private final RootCommand commands;

    @Parameters(arity = "2..*", paramLabel = "ID", descriptionKey = "ids")
    private List<String> ids;

    @Option(names = "--on", paramLabel = "FILE")
    private Optional<String> on;

    @Option(names = "--width", paramLabel = "WIDTH")
    private Optional<String> width;

    @Option(names = "--title", paramLabel = "TITLE")
    private Optional<String> title;

    @Option(names = "--units", defaultValue = "METRIC")
    private UnitSystem units;

    @Mixin
    private final Output output;

    SamplesCommand(RootCommand commands) {
        this.commands = commands;
        this.output = new Output(commands, NAME);
    }

    @Override
    public Integer call() throws Exception {
        Structures structures = Structures.with(commands.ownStructures());
        structures.problems().forEach(commands.console().err()::println);
        List<Structure> edges = new ArrayList<>();
        for (String id : ids) {
            edges.add(StructuresCommand.find(structures, id, commands.asked(NAME)));
        }
        Piece samples = samples(base(), edges);
        String text = new PieceFile(title.map(samples::withTitle).orElse(samples), Unknown.none()).checkedText();
        try (output) {
            output.begin(output.to(), text);
        }
        return RootCommand.DONE;
    }

    /** Loom, warp and yarns: of a piece, or as is usual on a narrow warp. */
    private Piece base() throws FileProblem {
        if (on.isPresent()) {
            Loaded work = InAndOut.work(on.get(), commands.console());
            return work instanceof Loaded.OfPiece one
                    ? one.plan().piece()
                    : ((Loaded.OfClass) work).plan().set().piece();
        }
        Piece usual = Beginnings.empty(units);
        return usual.withWarp(usual.warp().withWidth(SampleWarp.usualWidth(units)));
    }

    private Piece samples(Piece base, List<Structure> edges) {
        try {
            Piece narrow = width.map(typed -> base.withWarp(base.warp()
                            .withWidth(Length.parse(typed, base.habits().units().usual()))))
                    .orElse(base);
            return SampleWarp.of(narrow, edges, Locale.UK);
        } catch (IllegalArgumentException refused) {
            throw new ParameterException(commands.asked(NAME), refused.getMessage(), refused);
        }
    }
}
