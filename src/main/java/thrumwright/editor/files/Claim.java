package thrumwright.editor.files;

import java.nio.file.Path;
import java.util.Optional;
import thrumwright.store.FileProblem;
import thrumwright.store.keeping.Claims;

/** One document's claim on its file: whether somebody works on it already. */
final class Claim {
    private final Optional<Claims> claims;
    private Optional<Path> wanted = Optional.empty();
    private Optional<Path> held = Optional.empty();

    Claim(Optional<Claims> claims) {
        this.claims = claims;
    }

    /**
     * Claims the file on which the document is from now on, and gives the one before free.
     *
     * @return whether that file is another than before and somebody else works on it
     * @throws FileProblem if it can't be told
     */
    boolean meetsAnother(Optional<Path> path) throws FileProblem {
        if (path.equals(wanted)) {
            return false;
        }
        free();
        wanted = path;
        return path.isPresent() && !take(path.get());
    }

    /**
     * Whether a file may be written to: it is claimed here, or can be.
     *
     * @throws FileProblem if it can't be told
     */
    boolean mayWrite(Path path) throws FileProblem {
        return held.equals(Optional.of(path)) || free(path);
    }

    private boolean free(Path path) throws FileProblem {
        if (claims.isEmpty()) {
            return true;
        }
        if (wanted.equals(Optional.of(path))) {
            return take(path);
        }
        boolean free = claims.get().claim(path);
        if (free) {
            claims.get().free(path);
        }
        return free;
    }

    private boolean take(Path path) throws FileProblem {
        boolean taken = claims.isEmpty() || claims.get().claim(path);
        held = taken ? Optional.of(path) : Optional.empty();
        return taken;
    }

    /** @throws FileProblem if that can't be done */
    void free() throws FileProblem {
        Optional<Path> before = held;
        held = Optional.empty();
        wanted = Optional.empty();
        if (before.isPresent() && claims.isPresent()) {
            claims.get().free(before.get());
        }
    }
}
