package thrumwright.commandline;

import java.io.PrintStream;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import thrumwright.block.Block;
import thrumwright.piece.Structure;
import thrumwright.plan.Words;
import thrumwright.store.Structures;

@Command(
        name = "structures",
        description = "Lists the ways to begin a piece, or tells more of one.",
        mixinStandardHelpOptions = true)
final class StructuresCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @ParentCommand
    private Commands commands;

    @Parameters(index = "0", arity = "0..1", paramLabel = "ID", description = "The one to tell more of.")
    private String id;

    @Override
    public Integer call() {
        Structures structures = Structures.with(commands.ownStructures());
        structures.problems().forEach(commands.console().err()::println);
        PrintStream out = commands.console().out();
        if (id == null) {
            structures.all().forEach(each -> out.printf(Locale.ROOT, "%-20s %s%n", each.id(), each.name()));
            return Commands.DONE;
        }
        tell(find(structures, id, spec), out);
        return Commands.DONE;
    }

    static Structure find(Structures structures, String id, CommandSpec spec) {
        Optional<Structure> found = structures.byId(id);
        return found.orElseThrow(() -> new ParameterException(
                spec.commandLine(), "There is no structure “" + id + "”; “thrumwright structures” lists them."));
    }

    private static void tell(Structure structure, PrintStream out) {
        out.println(structure.name());
        out.println(structure.use());
        if (!structure.needs().isEmpty()) {
            out.println("Needs: " + structure.needs());
        }
        out.println("Source: " + structure.source());
        out.println("From the bottom:");
        Words words = new Words(Locale.UK);
        for (Block block : structure.end().blocks()) {
            out.println("  " + words.name(block));
        }
    }
}
