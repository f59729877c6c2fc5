package thrumwright.editor.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.keeping.Fingerprint;

/**
 * A class that was read, with what its file and that of its piece held at that moment.
 *
 * @param pieceHeld empty if the piece stands in the class's file itself
 */
public record ReadClass(ClassFile file, Fingerprint held, Optional<Fingerprint> pieceHeld) {
    /** @throws FileProblem with a plain sentence that says where and what would be right */
    public static ReadClass of(String text, Path path) throws FileProblem {
        List<Fingerprint> seen = new ArrayList<>();
        ClassFile.PieceSource source = ClassFile.sourceFor(path);
        ClassFile file = ClassFile.read(text, name -> {
            String piece = source.text(name);
            seen.add(Fingerprint.of(piece));
            return piece;
        });
        return new ReadClass(file, Fingerprint.of(text), seen.stream().findFirst());
    }
}
