package thrumwright.store.keeping;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A document as it stood when it was last changed without being saved.
 *
 * @param file where it was read from or saved last; empty if it was nowhere on file yet
 * @param base what that file held when it was read or saved last; empty if there was none
 * @param when the last change
 * @param text the whole document
 */
public record Unsaved(Optional<Path> file, Optional<Fingerprint> base, Instant when, String text) {
    private static final String MARK = "thrumwright-journal-1";

    public Unsaved {
        Objects.requireNonNull(file);
        Objects.requireNonNull(base);
        Objects.requireNonNull(when);
        Objects.requireNonNull(text);
    }

    /** As it is kept: a few lines about it, an empty one, the document. */
    String journal() {
        StringBuilder lines = new StringBuilder(MARK).append('\n');
        file.ifPresent(path -> lines.append("file=").append(path.toUri()).append('\n'));
        base.ifPresent(print -> lines.append("base=").append(print.sha256()).append('\n'));
        lines.append("when=").append(when).append('\n');
        lines.append("sha256=").append(Fingerprint.of(text).sha256()).append('\n');
        return lines.append('\n').append(text).toString();
    }

    /** Reads what {@link #journal} wrote; empty if it isn't whole. */
    static Optional<Unsaved> read(String journal) {
        int gap = journal.indexOf("\n\n");
        if (gap < 0 || !journal.startsWith(MARK + "\n")) {
            return Optional.empty();
        }
        Map<String, String> about = about(journal.substring(0, gap));
        String text = journal.substring(gap + 2);
        if (!Fingerprint.of(text).sha256().equals(about.get("sha256"))) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Unsaved(
                    Optional.ofNullable(about.get("file")).map(URI::create).map(Path::of),
                    Optional.ofNullable(about.get("base")).map(Fingerprint::new),
                    Instant.parse(about.getOrDefault("when", "")),
                    text));
        } catch (DateTimeException | IllegalArgumentException | FileSystemNotFoundException e) {
            return Optional.empty();
        }
    }

    private static Map<String, String> about(String head) {
        Map<String, String> about = new LinkedHashMap<>();
        head.lines()
                .skip(1)
                .map(line -> line.split("=", 2))
                .filter(parts -> parts.length == 2)
                .forEach(parts -> about.put(parts[0], parts[1]));
        return about;
    }
}
