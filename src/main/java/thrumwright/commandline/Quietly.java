package thrumwright.commandline;

import picocli.CommandLine.Option;

/** Whether the exit code alone is to tell. */
final class Quietly {
    @Option(
            names = {"-q", "--quiet"},
            descriptionKey = "quiet")
    private boolean wanted;

    boolean wanted() {
        return wanted;
    }
}
