package thrumwright.commandline;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.concurrent.Callable;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import thrumwright.store.FileProblem;

/**
 * All that can be asked on the command line.
 *
 * <p>Exit codes: 0 done, 1 the piece has a problem (only {@code check}), 2 asked wrongly, 3 a file can't be read or
 * written, 4 the program itself failed, 5 there isn't memory enough.
 */
@Command(name = "thrumwright", mixinStandardHelpOptions = true, exitCodeOnInvalidInput = RootCommand.ASKED_WRONGLY)
public final class RootCommand implements Runnable {
    /** What the help says of each command and option, by the keys that the parser asks for. */
    static final String USAGE = "thrumwright.commandline.usage";

    /** In the order in which help has them. */
    private static final List<String> COMMANDS =
            List.of("plan", "sheet", "loom", "check", "structures", "begin", "samples");

    static final int DONE = 0;
    static final int PROBLEM_FOUND = 1;
    static final int ASKED_WRONGLY = 2;
    static final int FILE_TROUBLE = 3;
    static final int OWN_FAULT = 4;
    static final int NO_MEMORY = 5;

    private final Console console;
    private final Path ownStructures;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    private RootCommand(Console console, Path ownStructures) {
        this.console = console;
        this.ownStructures = ownStructures;
    }

    /** Where data and messages go, and where input comes from. */
    record Console(InputStream in, PrintStream out, PrintStream err) {}

    /**
     * Does what the arguments ask for.
     *
     * @param ownStructures the folder of the weaver's own structures; it need not be there
     * @param version what {@code --version} says
     * @return the exit code
     */
    public static int run(
            String[] arguments, InputStream in, PrintStream out, PrintStream err, Path ownStructures, String version) {
        RootCommand commands = new RootCommand(new Console(in, out, err), ownStructures);
        PlainlyAsked plainly = new PlainlyAsked(arguments);
        int code = DONE;
        if (plainly.version()) {
            out.println(named(version));
        } else if (plainly.help()) {
            out.writeBytes(RootHelp.bytes());
        } else if (plainly.plans()) {
            code = commands.survived(() -> commands.tried(new PlanCommand(commands, plainly.files())));
        } else {
            code = commands.parsed(version, arguments);
        }
        err.flush();
        return arrived(out, err, code);
    }

    /** As the parser finds that it is meant. */
    static int parsed(String[] arguments, Console console, Path ownStructures, String version) {
        return new RootCommand(console, ownStructures).parsed(version, arguments);
    }

    private int parsed(String version, String... arguments) {
        CommandLine line = line(version, wanted(arguments));
        line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8));
        return survived(() -> line.execute(arguments));
    }

    private int tried(Callable<Integer> command) {
        try {
            return command.call();
        } catch (Exception e) {
            return trouble(e);
        }
    }

    /**
     * All commands with their options and what is said of them, for whoever writes about them.
     *
     * @param version what {@code --version} says
     */
    public static CommandLine all(String version) {
        return new RootCommand(new Console(System.in, System.out, System.err), Path.of("")).line(version, COMMANDS);
    }

    /** To look at all commands takes several times as long as most of them do: only the one that is asked for is. */
    private static List<String> wanted(String... arguments) {
        String first = arguments.length == 0 ? "" : arguments[0];
        return COMMANDS.contains(first) ? List.of(first) : COMMANDS;
    }

    private static String named(String version) {
        return "Thrumwright " + version;
    }

    private Object command(String name) {
        return switch (name) {
            case "plan" -> new PlanCommand(this);
            case "sheet" -> new SheetCommand(this);
            case "loom" -> new LoomCommand(this);
            case "check" -> new CheckCommand(this);
            case "structures" -> new StructuresCommand(this);
            case "begin" -> new BeginCommand(this);
            case "samples" -> new SamplesCommand(this);
            default -> throw new IllegalArgumentException(name);
        };
    }

    private CommandLine line(String version, List<String> wanted) {
        CommandLine line = new CommandLine(this);
        for (String name : wanted) {
            line.addSubcommand(command(name));
        }
        line.setResourceBundle(ResourceBundle.getBundle(USAGE, Locale.ROOT));
        line.getCommandSpec().versionProvider(() -> new String[] {named(version)});
        line.addSubcommand(new CommandLine.HelpCommand());
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler(new AskedWrongly());
        line.setExecutionExceptionHandler((problem, which, parsed) -> trouble(problem));
        return line;
    }

    /**
     * The exit code of something whose answer was printed.
     *
     * @param code the exit code if the answer arrived
     * @return code, or that for trouble with a file if the answer, or a part of it, was lost on its way
     */
    public static int arrived(PrintStream out, PrintStream err, int code) {
        if (!out.checkError()) {
            return code;
        }
        err.println(Said.of("answer.lost"));
        return FILE_TROUBLE;
    }

    /** What Java itself can't go on with is no answer either, and nobody's fault in the piece. */
    private int survived(IntSupplier work) {
        try {
            return work.getAsInt();
        } catch (OutOfMemoryError e) {
            console.err().println(Said.of("memory"));
            return NO_MEMORY;
        } catch (StackOverflowError e) {
            console.err().println(Said.of("fault"));
            console.err().println("  " + e + ", in " + e.getStackTrace()[0]);
            return OWN_FAULT;
        }
    }

    private int trouble(Exception problem) {
        if (problem instanceof FileProblem) {
            console.err().println(problem.getMessage());
            return FILE_TROUBLE;
        }
        if (problem instanceof UncheckedIOException disk) {
            console.err()
                    .println(Said.of(
                            "disk", "why", String.valueOf(disk.getCause().getMessage())));
            return FILE_TROUBLE;
        }
        console.err().println(Said.of("fault"));
        console.err().println("  " + problem + ", in " + problem.getStackTrace()[0]);
        return OWN_FAULT;
    }

    Console console() {
        return console;
    }

    /** The line of one of the commands, for what was asked wrongly there. */
    CommandLine asked(String command) {
        return spec.subcommands().get(command);
    }

    Path ownStructures() {
        return ownStructures;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
