package thrumwright.store.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.Phrase;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/**
 * Which files are being worked on, by this program or by another that runs. A claim ends with its process, however that
 * ends, so that none is left behind. Claims lie in the program's own folder: beside the weaver's files they would be
 * litter.
 */
public final class Claims {
    private final Path folder;
    private final Map<Path, Hold> own = new HashMap<>();

    /** @param folder which need not be there yet */
    public Claims(Path folder) {
        this.folder = Objects.requireNonNull(folder);
    }

    /**
     * Claims a file for this program.
     *
     * @return whether it is ours now; false: somebody works on it already
     * @throws FileProblem if nothing can be claimed at all
     */
    public synchronized boolean claim(Path file) throws FileProblem {
        Path claim = lying(real(file));
        if (own.containsKey(claim)) {
            return false;
        }
        try {
            Files.createDirectories(folder);
            Optional<Hold> hold = Hold.on(claim);
            hold.ifPresent(held -> own.put(claim, held));
            return hold.isPresent();
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("claim.unknown", Map.of("file", file)), e);
        }
    }

    /**
     * Gives a file free that was claimed here; nothing happens if it wasn't.
     *
     * @throws FileProblem if that can't be done
     */
    public synchronized void free(Path file) throws FileProblem {
        Hold hold = own.remove(lying(real(file)));
        if (hold == null) {
            return;
        }
        try {
            hold.close();
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("claim.not-freed", Map.of("file", file)), e);
        }
    }

    /** Links lead to the same file; one that isn't there yet is known by its folder. */
    private static Path real(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        try {
            if (Files.exists(whole)) {
                return whole.toRealPath();
            }
            Path parent = whole.getParent();
            return parent == null || !Files.exists(parent)
                    ? whole
                    : parent.toRealPath().resolve(whole.getFileName());
        } catch (IOException e) {
            // what can't be followed is known by its name
            return whole;
        }
    }

    private Path lying(Path real) {
        return folder.resolve(Fingerprint.of(real.toString()).sha256().substring(0, 32) + ".claim");
    }
}
