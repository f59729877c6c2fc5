package thrumwright.app;

import java.awt.GraphicsEnvironment;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import thrumwright.commandline.RootCommand;
import thrumwright.editor.EditorApp;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.UserFolder;

/** Where the program starts: the window, or what the command line asks for. */
public final class Main {
    private static final String DEMO = "--demo";

    private Main() {}

    /**
     * Opens the window with no argument, with the name of a piece's file, or with {@code --demo} for the demo piece; else does what the arguments ask for. Without
     * a display the piece's plan is shown instead of opening the window; of the demo piece the step sheet is written too.
     */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = new Terminal(new FileOutputStream(FileDescriptor.out));
        PrintStream err = new Terminal(new FileOutputStream(FileDescriptor.err));
        Optional<Path> file = pieceFile(arguments);
        boolean demo = arguments.length == 1 && arguments[0].equals(DEMO);
        if (arguments.length > 0 && file.isEmpty() && !demo) {
            System.exit(RootCommand.run(arguments, System.in, out, err, UserFolder.structures(), Version.number()));
        } else if (GraphicsEnvironment.isHeadless()) {
            System.exit(withoutWindow(file, out, err));
        } else if (demo) {
            EditorApp.openDemo(Version.number());
        } else {
            EditorApp.open(file, Version.number());
        }
    }

    private static int withoutWindow(Optional<Path> file, PrintStream out, PrintStream err) {
        try {
            WithoutWindow shown = new WithoutWindow(out);
            if (file.isPresent()) {
                shown.plan(file.get());
            } else {
                shown.show(Path.of("").toAbsolutePath());
            }
            return RootCommand.arrived(out, err, 0);
        } catch (FileProblem e) {
            err.println(e.getMessage());
            return 3;
        }
    }

    /** A single argument that ends like a file of a piece is one to open, whether or not it is there. */
    private static Optional<Path> pieceFile(String[] arguments) {
        boolean one = arguments.length == 1 && !arguments[0].startsWith("-") && FileSort.isOurs(arguments[0]);
        try {
            return one ? Optional.of(Path.of(arguments[0])) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
