package thrumwright.store.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import thrumwright.measure.Phrase;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/** Of each file that was saved the version before, in the program's own folder. */
public final class Earlier {
    private final Path folder;

    /** @param folder which need not be there yet */
    public Earlier(Path folder) {
        this.folder = Objects.requireNonNull(folder);
    }

    /**
     * Keeps what a file holds, before something else takes its place; nothing happens if there is none yet.
     *
     * @throws FileProblem if it can't be kept
     */
    public void keep(Path file) throws FileProblem {
        if (!Files.isRegularFile(file)) {
            return;
        }
        try {
            Files.createDirectories(folder);
            SafeFile.write(of(file), out -> Files.copy(file, out));
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("earlier.not-kept", Map.of("file", file)), e);
        }
    }

    /** Where the version before lies, if there is one: by its name, with a mark of the folder in which the file is. */
    public Path of(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        String mark = Fingerprint.of(whole.toString()).sha256().substring(0, 8);
        return folder.resolve(mark + "-" + whole.getFileName());
    }
}
