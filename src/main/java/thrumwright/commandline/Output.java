package thrumwright.commandline;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import thrumwright.store.FileProblem;
import thrumwright.store.NewFiles;

/**
 * The files that a command writes, all or none of them; “-” is the standard output. Nothing that is there is written over
 * unless that is asked for.
 */
final class Output implements AutoCloseable {
    static final String STANDARD = "-";

    private final RootCommand commands;
    private final String command;
    private final NewFiles files = new NewFiles();
    private final List<String> names = new ArrayList<>();

    @Option(names = "--force")
    private boolean force;

    @Mixin
    private final Quietly quiet = new Quietly();

    /** @param command whose files they are */
    Output(RootCommand commands, String command) {
        this.commands = commands;
        this.command = command;
    }

    boolean quiet() {
        return quiet.wanted();
    }

    /**
     * Takes what goes into a file; it has its place after {@link #keep()}.
     *
     * @throws FileProblem if it can't be written
     * @throws IOException if it can't be made
     */
    void take(String name, NewFiles.Content content) throws FileProblem, IOException {
        if (name.equals(STANDARD)) {
            content.writeTo(commands.console().out());
            return;
        }
        Path path = InAndOut.path(name);
        if (!force && Files.isRegularFile(path)) {
            throw new ParameterException(commands.asked(command), Said.of("file.there", "name", name));
        }
        files.add(path, content);
        names.add(name);
    }

    /** Lets all files take their places and says so. */
    void keep() throws FileProblem {
        files.keep();
        if (!quiet.wanted()) {
            names.forEach(name -> commands.console().err().println(Said.of("file.written", "name", name)));
        }
    }

    @Override
    public void close() throws FileProblem {
        files.close();
    }
}
