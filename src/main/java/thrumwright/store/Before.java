package thrumwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** What stood in several places before other files take them, so that all can go back if one can't be taken. */
final class Before implements AutoCloseable {
    /** Copies by their places; a place that was empty has none. */
    private final Map<Path, Path> copies = new HashMap<>();

    private final Set<Path> taken = new LinkedHashSet<>();

    private Before() {}

    /** @throws FileProblem if what stands there can't be kept; nothing is taken then */
    static Before of(Collection<Path> places) throws FileProblem {
        Before before = new Before();
        for (Path place : places) {
            try {
                before.copy(place);
            } catch (IOException e) {
                before.close();
                throw SafeFile.unwritable(place, e);
            }
        }
        return before;
    }

    private void copy(Path place) throws IOException {
        if (Files.exists(place)) {
            Path copy = NewFiles.beside(place);
            copies.put(place, copy);
            Files.copy(place, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
        }
    }

    /** Another file has taken that place. */
    void taken(Path place) {
        taken.add(place);
    }

    /** All places are taken: nothing goes back. */
    void forget() {
        taken.clear();
    }

    /**
     * Puts back what was taken, and takes away the copies.
     *
     * @throws FileProblem if that can't be done
     */
    @Override
    public void close() throws FileProblem {
        for (Path place : taken) {
            putBack(place);
        }
        for (Path copy : copies.values()) {
            try {
                Files.deleteIfExists(copy);
            } catch (IOException e) {
                throw new FileProblem("file.left-over", Map.of("file", copy), e);
            }
        }
    }

    private void putBack(Path place) throws FileProblem {
        try {
            if (copies.containsKey(place)) {
                SafeFile.move(copies.get(place), place);
            } else {
                Files.deleteIfExists(place);
            }
        } catch (IOException e) {
            throw SafeFile.unwritable(place, e);
        }
    }
}
