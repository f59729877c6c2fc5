package thrumwright.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Where the program starts. */
@Command(
        name = "thrumwright",
        description = "Plans, draws and prints both ends of a hand-woven tapestry.",
        versionProvider = Version.class,
        mixinStandardHelpOptions = true)
public final class Main implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** Starts the program with what was typed after its name. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Main()).execute(arguments));
    }
}
