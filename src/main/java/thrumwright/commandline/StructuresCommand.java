package thrumwright.commandline;

import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import thrumwright.block.Block;
import thrumwright.piece.Structure;
import thrumwright.plan.words.Words;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.JsonText;
import thrumwright.store.StructureFile;
import thrumwright.store.Structures;

@Command(name = "structures", mixinStandardHelpOptions = true)
final class StructuresCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Mixin
    private final AsJson json = new AsJson();

    @Parameters(index = "0", arity = "0..1", paramLabel = "ID", descriptionKey = "id")
    private String id;

    StructuresCommand(RootCommand commands) {
        this.commands = commands;
    }

    @Override
    public Integer call() throws FileProblem {
        Structures structures = Structures.with(commands.ownStructures());
        structures.problems().forEach(commands.console().err()::println);
        PrintStream out = commands.console().out();
        if (json.wanted()) {
            out.print(id == null ? listed(structures) : asInItsFile(structures));
            return RootCommand.DONE;
        }
        if (id == null) {
            int wide = structures.all().stream()
                    .mapToInt(each -> each.id().length())
                    .max()
                    .orElse(1);
            String line = "%-" + wide + "s  %s%n";
            structures.all().forEach(each -> out.printf(Locale.ROOT, line, each.id(), each.name()));
            return RootCommand.DONE;
        }
        tell(find(structures, id, commands.asked("structures")), out);
        return RootCommand.DONE;
    }

    private static String listed(Structures structures) {
        return JsonText.of(Map.of(
                "thrumwrightStructures",
                1,
                "structures",
                structures.all().stream().map(StructuresCommand::json).toList()));
    }

    private static Map<String, Object> json(Structure structure) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", structure.id());
        json.put("name", structure.name());
        json.put("use", structure.use());
        json.put("goodFor", structure.goodFor());
        return json;
    }

    private String asInItsFile(Structures structures) throws FileProblem {
        return StructureFile.of(find(structures, id, commands.asked("structures")))
                .text();
    }

    /** One of those structures, or one in a file. */
    static Structure find(Structures structures, String name, CommandLine asked) throws FileProblem {
        Optional<Structure> found = structures.byId(name);
        if (found.isPresent()) {
            return found.get();
        }
        if (FileSort.isOurs(name)) {
            return InAndOut.structure(name);
        }
        List<String> ids = structures.all().stream().map(Structure::id).toList();
        throw new ParameterException(asked, Said.of("structure.none", "name", name) + AskedWrongly.meant(name, ids));
    }

    private static void tell(Structure structure, PrintStream out) {
        out.println(structure.name());
        out.println(structure.use());
        if (!structure.needs().isEmpty()) {
            out.println(Said.of("structure.needs", "needs", structure.needs()));
        }
        structure
                .difficulty()
                .ifPresent(difficulty -> out.println(Said.of(
                        "structure.difficulty",
                        "difficulty",
                        difficulty.name().toLowerCase(Locale.ROOT).replace('_', ' '))));
        if (!structure.goodFor().isEmpty()) {
            out.println(Said.of("structure.good-for", "purposes", String.join(", ", structure.goodFor())));
        }
        out.println(Said.of("structure.source", "source", structure.source()));
        out.println(Said.of("structure.blocks"));
        Words words = new Words(Locale.UK);
        for (Block block : structure.end().blocks()) {
            out.println("  " + words.name(block));
        }
    }
}
