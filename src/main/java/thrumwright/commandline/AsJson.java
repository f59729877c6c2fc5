package thrumwright.commandline;

import picocli.CommandLine.Option;

/** Whether the answer is for another program. */
final class AsJson {
    @Option(names = "--json", descriptionKey = "json")
    private boolean wanted;

    boolean wanted() {
        return wanted;
    }
}
