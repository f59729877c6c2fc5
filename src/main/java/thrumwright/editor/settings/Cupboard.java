package thrumwright.editor.settings;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import thrumwright.piece.Piece;
import thrumwright.piece.Stash;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;
import thrumwright.store.StashFile;

/** Where the weaver's looms and yarns are kept, beside the settings. */
public final class Cupboard {
    private static final String NAME = "looms-and-yarns.json";

    private final Optional<Path> file;
    private Stash stash = Stash.empty();

    /** @param folder in which they are kept; empty: nowhere */
    public Cupboard(Optional<Path> folder) {
        this.file = folder.map(there -> there.resolve(NAME));
    }

    /** What is kept now, in another window too; what can't be read counts as nothing and is left as it is. */
    public Stash stash() {
        file.filter(Files::isRegularFile).ifPresent(this::read);
        return stash;
    }

    private void read(Path from) {
        try {
            stash = StashFile.read(SafeFile.read(from));
        } catch (FileProblem e) {
            stash = Stash.empty();
        }
    }

    /**
     * Keeps the loom and the yarns of a piece.
     *
     * @throws FileProblem if what is there can't be read, so that nothing of it is lost, or can't be written
     */
    public void keep(Piece piece) throws FileProblem {
        if (file.isEmpty()) {
            stash = stash.with(piece);
            return;
        }
        Path path = file.get();
        Stash before = Files.isRegularFile(path) ? StashFile.read(SafeFile.read(path)) : Stash.empty();
        stash = before.with(piece);
        if (!stash.equals(before)) {
            SafeFile.write(path, StashFile.text(stash));
        }
    }
}
