package thrumwright.editor.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;
import thrumwright.store.keeping.Fingerprint;

/** What became of a file while it was open: each change is told once. */
final class OutsideLook {
    private Optional<Fingerprint> told = Optional.empty();
    private boolean goneTold;

    /**
     * The key of what is to be said; empty if nothing is new.
     *
     * @param base what the file held when it was read or written here
     */
    Optional<String> news(Path file, Fingerprint base) {
        boolean before = goneTold;
        goneTold = !Files.exists(file);
        if (goneTold) {
            return before ? Optional.empty() : Optional.of("message.gone-outside");
        }
        Optional<Fingerprint> now = held(file);
        if (now.equals(Optional.of(base)) || now.equals(told) && now.isPresent()) {
            return Optional.empty();
        }
        told = now;
        return Optional.of("message.changed-outside");
    }

    /** What a file holds; empty if it can't be read: whatever it is, it isn't what was read here. */
    static Optional<Fingerprint> held(Path file) {
        try {
            return Optional.of(Fingerprint.of(SafeFile.read(file)));
        } catch (FileProblem e) {
            return Optional.empty();
        }
    }
}
