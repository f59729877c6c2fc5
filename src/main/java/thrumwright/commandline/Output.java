package thrumwright.commandline;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.NewFiles;
import thrumwright.store.SafeFile;

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

    @Option(
            names = {"-o", "--to"},
            paramLabel = "NAME",
            defaultValue = STANDARD)
    private String to;

    @Option(names = "--force")
    private boolean force;

    @Mixin
    private final Quietly quiet = new Quietly();

    /** @param command whose files they are */
    Output(RootCommand commands, String command) {
        this.commands = commands;
        this.command = command;
    }

    /** What is written: the name of a file, or what the names of several begin with. */
    String to() {
        return to;
    }

    /** Whether it goes to the standard output. */
    boolean standard() {
        return to.equals(STANDARD);
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
            throw there(name);
        }
        files.add(path, content);
        names.add(name);
    }

    /**
     * Writes a file that isn't there yet, also if one of that name appears meanwhile, unless writing over is asked for.
     *
     * @throws ParameterException if the name ends like another sort of file
     * @throws FileProblem if it can't be written
     * @throws IOException if the standard output can't be
     */
    void begin(String name, String text) throws FileProblem, IOException {
        refuseOtherEndings(name);
        if (force || name.equals(STANDARD)) {
            take(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
        } else if (SafeFile.begins(InAndOut.path(name), text)) {
            names.add(name);
        } else {
            throw there(name);
        }
        keep();
    }

    /** A name that ends like another sort of file would never be opened by a double click. */
    private void refuseOtherEndings(String name) {
        String ending = FileEnding.of(name);
        if (!ending.isEmpty() && !FileSort.isOurs(name)) {
            throw new ParameterException(
                    commands.asked(command),
                    Said.of("begin.ending", Map.of("name", name, "ending", ending, "right", FileSort.PIECE.ending())));
        }
    }

    private ParameterException there(String name) {
        return new ParameterException(commands.asked(command), Said.of("file.there", "name", name));
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
