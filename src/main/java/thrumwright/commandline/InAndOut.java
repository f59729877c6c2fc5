package thrumwright.commandline;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import thrumwright.measure.Phrase;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.piece.Structure;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.StructureFile;
import thrumwright.store.Unknown;

/** Input and output by name, where “-” is the standard one. */
final class InAndOut {
    private InAndOut() {}

    /**
     * What a file holds: by its content a class, a piece, or a structure, which is tried on a new piece. A class on the standard
     * input names pieces as seen from here.
     */
    static Loaded work(String name, RootCommand.Console console) throws FileProblem {
        String shown = name.equals(Output.STANDARD) ? Said.of("input.name") : name;
        try {
            return work(name, shown, text(name, console), console);
        } catch (FileProblem e) {
            throw e.in(shown);
        }
    }

    private static Loaded work(String name, String shown, String text, RootCommand.Console console) throws FileProblem {
        return switch (FileSort.of(text)) {
            case PIECE -> {
                PieceFile file = PieceFile.read(text);
                tell(file.unknown(), shown, console);
                yield new Loaded.OfPiece(Plan.of(file.piece()));
            }
            case CLASS -> {
                ClassFile file = ClassFile.read(text, pieces(name));
                tell(file.unknown(), shown, console);
                yield new Loaded.OfClass(ClassPlan.of(file.set()));
            }
            case STRUCTURE -> {
                StructureFile file = StructureFile.read(text);
                tell(file.unknown(), shown, console);
                yield new Loaded.OfPiece(Plan.of(tried(file.structure())));
            }
        };
    }

    /** Beside the answer, so that it stays what it is. */
    private static void tell(Unknown unknown, String file, RootCommand.Console console) {
        unknown.notices()
                .forEach(notice ->
                        console.err().println(Said.of("file.notice", Map.of("file", file, "notice", notice))));
    }

    private static ClassFile.PieceSource pieces(String name) throws FileProblem {
        return name.equals(Output.STANDARD) ? ClassFile.PieceSource.in(Path.of("")) : ClassFile.sourceFor(path(name));
    }

    private static Piece tried(Structure structure) {
        return Beginnings.with(structure, UnitSystem.METRIC).withTitle(structure.name());
    }

    private static String text(String name, RootCommand.Console console) throws FileProblem {
        if (!name.equals(Output.STANDARD)) {
            return SafeFile.read(path(name));
        }
        try {
            return SafeFile.text(console.in(), Said.of("input.name"));
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.no-input"), e);
        }
    }

    /** A structure in a file. */
    static Structure structure(String name) throws FileProblem {
        try {
            return StructureFile.read(SafeFile.read(path(name))).structure();
        } catch (FileProblem e) {
            throw e.in(name);
        }
    }

    static Path path(String name) throws FileProblem {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw SafeFile.problem(new Phrase("file.bad-name", Map.of("name", name)), e);
        }
    }
}
