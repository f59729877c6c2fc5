package thrumwright.commandline;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;

/** Input and output by name, where “-” is the standard one. */
final class Files {
    private static final String STANDARD = "-";

    private Files() {}

    static PieceFile piece(String name, Commands.Console console) throws FileProblem {
        if (!name.equals(STANDARD)) {
            return PieceFile.read(SafeFile.read(path(name)));
        }
        try {
            return PieceFile.read(SafeFile.text(console.in(), "The standard input"));
        } catch (IOException e) {
            throw SafeFile.problem("The standard input can't be read.", e);
        }
    }

    /** To a file, or to the standard output. */
    static void write(String name, Commands.Console console, byte[] bytes) throws FileProblem {
        if (name.equals(STANDARD)) {
            console.out().writeBytes(bytes);
        } else {
            SafeFile.write(path(name), bytes);
            console.err().println("Written: " + name);
        }
    }

    static Path path(String name) throws FileProblem {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw SafeFile.problem("“" + name + "” can't be the name of a file.", e);
        }
    }
}
