package thrumwright.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import thrumwright.piece.Piece;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.Unknown;

/** The file behind an open piece, if it has one, and what it looked like when it was read or written last. */
final class Documents {
    private Optional<Path> file = Optional.empty();
    private Unknown unknown = Unknown.none();
    private Optional<String> stamp = Optional.empty();

    /** @throws FileProblem if it can't be read; what was open stays */
    Piece open(Path from) throws FileProblem {
        PieceFile read = PieceFile.read(SafeFile.read(from));
        file = Optional.of(from);
        unknown = read.unknown();
        stamp = stamp(from);
        return read.piece();
    }

    Optional<Path> file() {
        return file;
    }

    /** Whether somebody else changed the file since. */
    boolean changedOutside() {
        return file.isPresent() && stamp.isPresent() && !stamp.equals(stamp(file.get()));
    }

    /** @throws FileProblem if it can't be written; the old file is as it was */
    void save(Piece piece, Path to) throws FileProblem {
        SafeFile.write(to, new PieceFile(piece, unknown).text());
        file = Optional.of(to);
        stamp = stamp(to);
    }

    private static Optional<String> stamp(Path file) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(attributes.lastModifiedTime() + " " + attributes.size());
        } catch (IOException e) {
            // a file that is gone or can't be looked at has no stamp; saving will say what is wrong with it
            return Optional.empty();
        }
    }
}
