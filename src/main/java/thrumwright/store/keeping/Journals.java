package thrumwright.store.keeping;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import thrumwright.measure.Phrase;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/**
 * The journals of all documents that are open in some window of this user, and those that are left of programs that ended
 * before they were saved.
 */
public final class Journals {
    /** After so long nobody comes back for what was not saved. */
    public static final Duration KEPT = Duration.ofDays(31);

    private static final String ENDING = ".journal";

    private final Path folder;
    private final Set<String> own = ConcurrentHashMap.newKeySet();

    /** @param folder which need not be there yet */
    public Journals(Path folder) {
        this.folder = Objects.requireNonNull(folder);
    }

    /** What is left, and where it lies. */
    public record Left(String id, Unsaved unsaved) {}

    /**
     * A journal for one more document.
     *
     * @throws FileProblem if none can be kept
     */
    public Journal begin() throws FileProblem {
        String id = UUID.randomUUID().toString();
        try {
            Files.createDirectories(folder);
            own.add(id);
            Hold hold = Hold.on(lock(id)).orElseThrow(() -> new IOException("a new name is held already"));
            return new Journal(this, id, hold);
        } catch (IOException e) {
            own.remove(id);
            throw SafeFile.problem(new Phrase("journal.none", Map.of("folder", folder)), e);
        }
    }

    /**
     * What programs left that ended before it was saved, the latest first.
     *
     * @throws FileProblem if the folder can't be looked into
     */
    public List<Left> left() throws FileProblem {
        List<Left> left = new ArrayList<>();
        for (String id : ids()) {
            if (!isOpen(id)) {
                read(id).ifPresent(unsaved -> left.add(new Left(id, unsaved)));
            }
        }
        left.sort((one, other) -> other.unsaved().when().compareTo(one.unsaved().when()));
        return left;
    }

    private Optional<Unsaved> read(String id) throws FileProblem {
        return Unsaved.read(SafeFile.read(file(id)));
    }

    /**
     * Forgets what was left and is wanted no longer, or is on file now.
     *
     * @throws FileProblem if it can't be taken away
     */
    public void forget(String id) throws FileProblem {
        try {
            Files.deleteIfExists(file(id));
            Files.deleteIfExists(lock(id));
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.not-removed", Map.of("file", file(id))), e);
        }
    }

    /**
     * Takes away what nobody came back for, and what can't be read.
     *
     * @throws FileProblem if the folder can't be looked into
     */
    public void sweep(Instant now) throws FileProblem {
        for (String id : ids()) {
            if (!isOpen(id)
                    && read(id).filter(unsaved -> unsaved.when().isAfter(now.minus(KEPT)))
                            .isEmpty()) {
                forget(id);
            }
        }
    }

    private List<String> ids() throws FileProblem {
        List<String> ids = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return ids;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + ENDING)) {
            for (Path file : files) {
                String name = String.valueOf(file.getFileName());
                ids.add(name.substring(0, name.length() - ENDING.length()));
            }
            return ids;
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.structures-unread", Map.of("folder", folder)), e);
        }
    }

    private boolean isOpen(String id) throws FileProblem {
        if (own.contains(id)) {
            return true;
        }
        try {
            Optional<Hold> hold = Hold.on(lock(id));
            if (hold.isPresent()) {
                hold.get().close();
            }
            return hold.isEmpty();
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.unread", Map.of("file", file(id))), e);
        }
    }

    Path file(String id) {
        return folder.resolve(id + ENDING);
    }

    private Path lock(String id) {
        return folder.resolve(id + ".lock");
    }

    void ended(String id) {
        own.remove(id);
    }
}
