package thrumwright.editor.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/** What a file looked like when it was read or written last, to see whether somebody else has changed it since. */
public record Stamp(FileTime changed, long size) {
    /** Empty if the file is gone or can't be looked at; saving will say what is wrong with it. */
    public static Optional<Stamp> of(Path file) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(new Stamp(attributes.lastModifiedTime(), attributes.size()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
