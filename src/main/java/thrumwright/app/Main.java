package thrumwright.app;

import java.awt.GraphicsEnvironment;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import thrumwright.commandline.Commands;
import thrumwright.editor.EditorApp;
import thrumwright.store.FileProblem;
import thrumwright.store.UserFolder;

/** Where the program starts: the window, or what the command line asks for. */
public final class Main {
    private Main() {}

    /**
     * Opens the window with no argument or with the name of a piece's file; else does what the arguments ask for. Without
     * a display the demo piece's step sheet is written instead of opening the window.
     */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        if (arguments.length == 0 && GraphicsEnvironment.isHeadless()) {
            System.exit(withoutWindow(out, err));
        }
        Optional<Path> file = pieceFile(arguments);
        if (arguments.length == 0 || file.isPresent() && !GraphicsEnvironment.isHeadless()) {
            EditorApp.open(file);
            return;
        }
        System.exit(Commands.run(arguments, System.in, out, err, UserFolder.structures(), Version.number()));
    }

    private static int withoutWindow(PrintStream out, PrintStream err) {
        try {
            new WithoutWindow(out).show(Path.of("").toAbsolutePath());
            return 0;
        } catch (FileProblem e) {
            err.println(e.getMessage());
            return 3;
        }
    }

    /** A single argument that names a file is a piece to open. */
    private static Optional<Path> pieceFile(String[] arguments) {
        if (arguments.length != 1 || arguments[0].startsWith("-") || !arguments[0].endsWith(".json")) {
            return Optional.empty();
        }
        Path file = Path.of(arguments[0]);
        return Files.isRegularFile(file) ? Optional.of(file) : Optional.empty();
    }

    /** The terminal as UTF-8 whatever the locale says: ½, × and ☐ must come out. */
    private static PrintStream utf8(FileDescriptor terminal) {
        return new PrintStream(new FileOutputStream(terminal), true, StandardCharsets.UTF_8);
    }
}
