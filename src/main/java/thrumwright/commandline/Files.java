package thrumwright.commandline;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.piece.Structure;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.NewFiles;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.StructureFile;

/** Input and output by name, where “-” is the standard one. */
final class Files {
    private static final String STANDARD = "-";

    private Files() {}

    /**
     * What a file holds: by its content a class, a piece, or a structure, which is tried on a new piece. A class on the standard
     * input names pieces as seen from here.
     */
    static Work work(String name, Commands.Console console) throws FileProblem {
        String text = text(name, console);
        if (StructureFile.isMeant(text)) {
            Structure structure = StructureFile.read(text).structure();
            Piece tried = Beginnings.with(structure, UnitSystem.METRIC).withTitle(structure.name());
            return new Work.OfPiece(Plan.of(tried));
        }
        if (!ClassFile.isClass(text)) {
            return new Work.OfPiece(Plan.of(PieceFile.read(text).piece()));
        }
        ClassFile.PieceSource pieces =
                name.equals(STANDARD) ? ClassFile.PieceSource.in(Path.of("")) : ClassFile.sourceFor(path(name));
        return new Work.OfClass(ClassPlan.of(ClassFile.read(text, pieces).set()));
    }

    private static String text(String name, Commands.Console console) throws FileProblem {
        if (!name.equals(STANDARD)) {
            return SafeFile.read(path(name));
        }
        try {
            return SafeFile.text(console.in(), "The standard input");
        } catch (IOException e) {
            throw SafeFile.problem("The standard input can't be read.", e);
        }
    }

    /** To a file, or to the standard output. */
    static void write(String name, Commands.Console console, NewFiles.Content content) throws FileProblem, IOException {
        if (name.equals(STANDARD)) {
            content.writeTo(console.out());
        } else {
            SafeFile.write(path(name), content);
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
