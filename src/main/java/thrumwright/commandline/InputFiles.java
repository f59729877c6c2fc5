package thrumwright.commandline;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Parameters;
import thrumwright.store.FileProblem;

/** The pieces and classes that a command is about, one after another. */
final class InputFiles {
    @Parameters(arity = "1..*", paramLabel = "FILE", descriptionKey = "files")
    private final List<String> names;

    InputFiles() {
        this(List.of());
    }

    InputFiles(List<String> names) {
        this.names = new ArrayList<>(names);
    }

    /** What is done with one file. */
    interface OnEach {
        /** @return the exit code for this file */
        int with(String name, Loaded file);
    }

    boolean several() {
        return names.size() > 1;
    }

    /**
     * Does it with each; one that can't be read is told, and those after it have their turn.
     *
     * @return the gravest exit code
     */
    int each(RootCommand.Console console, OnEach work) {
        int gravest = RootCommand.DONE;
        for (String name : names) {
            gravest = Math.max(gravest, one(name, console, work));
        }
        return gravest;
    }

    private static int one(String name, RootCommand.Console console, OnEach work) {
        try {
            return work.with(name, InAndOut.work(name, console));
        } catch (FileProblem e) {
            console.err().println(e.getMessage());
            return RootCommand.FILE_TROUBLE;
        }
    }
}
