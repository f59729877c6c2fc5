package thrumwright.commandline;

import picocli.CommandLine.Parameters;
import thrumwright.store.FileProblem;

/** The piece or class that a command is about. */
final class InputFile {
    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "file")
    private String name;

    String name() {
        return name;
    }

    Loaded load(RootCommand.Console console) throws FileProblem {
        return InAndOut.work(name, console);
    }
}
