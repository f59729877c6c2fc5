package thrumwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrase;

/**
 * What of a file another one that takes its place doesn't have by itself.
 *
 * @param names how many names it has: hard links
 */
public record Ownership(int names, String owner, String group) {
    /** Empty where there is no file, or the system doesn't tell. */
    public static Optional<Ownership> of(Path file) {
        if (!file.getFileSystem().supportedFileAttributeViews().contains("unix")) {
            return Optional.empty();
        }
        try {
            Map<String, Object> told = Files.readAttributes(file, "unix:nlink,owner,group");
            return Optional.of(new Ownership(
                    (Integer) told.get("nlink"),
                    told.get("owner").toString(),
                    told.get("group").toString()));
        } catch (IOException e) {
            // then there is nothing to keep, and whoever reads or writes the file tells what is amiss
            return Optional.empty();
        }
    }

    /** What has become otherwise since another file took its place; nothing if that can't be told. */
    public List<Phrase> changed(Path file) {
        return of(file).map(this::changed).orElse(List.of());
    }

    List<Phrase> changed(Ownership now) {
        List<Phrase> changed = new ArrayList<>();
        if (names > now.names()) {
            changed.add(new Phrase("ownership.names"));
        }
        if (!owner.equals(now.owner()) || !group.equals(now.group())) {
            changed.add(new Phrase("ownership.owner", Map.of("owner", owner, "group", group, "now", now.owner())));
        }
        return changed;
    }
}
