package thrumwright.store;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.Phrase;
import thrumwright.piece.ClassSet;

/**
 * A class as it was read from a file, with what this version didn't know of it.
 *
 * @param pieceName the file of its piece, as seen from the class's own file; empty if the piece stands in the class's
 *     file itself
 * @param unknown to be given back when the class is written again
 */
public record ClassFile(ClassSet set, Optional<String> pieceName, Unknown unknown) {
    /** The version of the class file that this program reads and writes. */
    public static final int VERSION = 1;

    private static final String QUOTED_MARK = "\"" + ClassFormat.MARK + "\"";

    private static final PieceSource NOWHERE = name -> {
        throw new IllegalStateException("nothing is read while a class is written");
    };

    public ClassFile {
        Objects.requireNonNull(set);
        Objects.requireNonNull(pieceName);
        Objects.requireNonNull(unknown);
    }

    /** Where the files of pieces come from that a class names. */
    @FunctionalInterface
    public interface PieceSource {
        /**
         * The text of a file.
         *
         * @throws FileProblem if it can't be read
         */
        String text(String name) throws FileProblem;

        /** Files by their names as seen from a folder. */
        static PieceSource in(Path folder) {
            return name -> {
                try {
                    return SafeFile.read(folder.resolve(name).normalize());
                } catch (InvalidPathException e) {
                    throw new FileProblem("file.bad-name", Map.of("name", name), e);
                }
            };
        }
    }

    /** Whether a text is meant to be a class: JSON with the mark of one. */
    public static boolean isClass(String text) {
        // a letter of the mark may be spelt by its number
        if (!text.contains(QUOTED_MARK) && !text.contains("\\u")) {
            return false;
        }
        try {
            return Json.read(text) instanceof Node.Obj object && object.fields().containsKey(ClassFormat.MARK);
        } catch (FileProblem e) {
            // what is wrong with it will be said by whoever reads it
            return false;
        }
    }

    /** @throws FileProblem with a plain sentence that says where and what would be right */
    public static ClassFile read(String text, PieceSource pieces) throws FileProblem {
        Fields fields = Fields.of(text);
        ClassFile file = ClassFormat.with(pieces).whole(fields);
        return new ClassFile(file.set(), file.pieceName(), fields.unknown());
    }

    /**
     * Reads a file; a piece that it names is looked for from its folder.
     *
     * @throws FileProblem with a plain sentence that says where and what would be right
     */
    public static ClassFile read(Path file) throws FileProblem {
        return read(SafeFile.read(file), sourceFor(file));
    }

    /** Where a file looks for the pieces that it names. */
    public static PieceSource sourceFor(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        return PieceSource.in(folder == null ? file.toAbsolutePath() : folder);
    }

    /** The piece, with what this version didn't know of it where it stands in the class's file. */
    public PieceFile piece() {
        return new PieceFile(set.piece(), unknown.within("piece"));
    }

    /**
     * The file of the piece; empty if it stands in the class's file itself.
     *
     * @param file of the class
     */
    public Optional<Path> piecePath(Path file) {
        return pieceName.map(name -> file.toAbsolutePath().resolveSibling(name).normalize());
    }

    /** The whole document; the same class makes the same text. */
    public String text() {
        return Json.write(ClassFormat.with(NOWHERE).object(this, unknown));
    }

    /**
     * As {@link #text()}, but never a text that couldn't be read again.
     *
     * @throws FileProblem saying where and what
     */
    public String checkedText() throws FileProblem {
        String text = text();
        String piece = new PieceFile(set.piece(), Unknown.none()).text();
        try {
            if (read(text, name -> piece).set().equals(set)) {
                return text;
            }
        } catch (FileProblem e) {
            throw new FileProblem("file.class-not-kept", Map.of("why", e.why()), e);
        }
        throw new FileProblem(new Phrase("file.class-differs"), null);
    }

    /** Another state of the same class; what isn't known of a member stays with it when others come or go. */
    public ClassFile with(ClassSet other) {
        MemberMoves moves = new MemberMoves(set.members(), other.members());
        return new ClassFile(other, pieceName, unknown.moved(moves::place));
    }

    /** The same class with its piece in the file itself. */
    public ClassFile withPieceInside() {
        return new ClassFile(set, Optional.empty(), unknown);
    }

    /** The same class with its piece in a file of its own, named as seen from the class's file. */
    public ClassFile withPieceIn(String name) {
        return new ClassFile(set, Optional.of(name), unknown);
    }

    /** A class that was never on file; its piece stands in it. */
    public static ClassFile fresh(ClassSet set) {
        return new ClassFile(set, Optional.empty(), Unknown.none());
    }
}
