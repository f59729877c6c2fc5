package thrumwright.store.keeping;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import thrumwright.measure.Phrase;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/**
 * A log of what nobody expected, for whoever mends the program. It says what kind of fault came where in the program, and
 * nothing of what is open: what a fault says of itself could be a name or a note out of a piece.
 */
public final class FaultLog {
    /** Then a new log is begun, and the one before is kept. */
    private static final long FULL = 200_000;

    private static final int MOST_FRAMES = 40;
    private static final int MOST_CAUSES = 4;

    private final Path folder;

    /** @param folder which need not be there yet */
    public FaultLog(Path folder) {
        this.folder = Objects.requireNonNull(folder);
    }

    /** What is kept of a fault, in lines. */
    public static String details(Instant when, String thread, Throwable thrown) {
        List<String> lines = new ArrayList<>();
        lines.add(when + " " + thread + ", Java " + System.getProperty("java.version") + ", "
                + System.getProperty("os.name"));
        Throwable each = thrown;
        for (int i = 0; each != null && i < MOST_CAUSES; i++) {
            lines.add(each.getClass().getName());
            StackTraceElement[] frames = each.getStackTrace();
            for (int j = 0; j < Math.min(frames.length, MOST_FRAMES); j++) {
                lines.add("  " + frames[j]);
            }
            each = each.getCause();
        }
        return String.join("\n", lines) + "\n";
    }

    /**
     * Adds to the log.
     *
     * @throws FileProblem if that can't be done
     */
    public synchronized void add(String details) throws FileProblem {
        Path log = file();
        try {
            Files.createDirectories(folder);
            if (Files.exists(log) && Files.size(log) > FULL) {
                Files.move(log, folder.resolve("faults-before.log"), StandardCopyOption.REPLACE_EXISTING);
            }
            Files.writeString(
                    log,
                    details + "\n",
                    StandardCharsets.UTF_8,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE,
                    StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.unwritten-new", Map.of("file", log)), e);
        }
    }

    /** Where the log lies, once there is one. */
    public Path file() {
        return folder.resolve("faults.log");
    }
}
