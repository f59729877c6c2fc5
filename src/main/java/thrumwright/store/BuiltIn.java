package thrumwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Files that come with the program; each folder has an index, since the inside of a jar can't be listed. */
public enum BuiltIn {
    STRUCTURES("/thrumwright/structures/"),
    DEMO("/thrumwright/demo/");

    private final String folder;

    BuiltIn(String folder) {
        this.folder = folder;
    }

    /** The names of the files, in the order of the index. */
    public List<String> names() {
        return text("index.txt")
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** @throws IllegalArgumentException if there is no such file */
    public String text(String name) {
        try (InputStream in = BuiltIn.class.getResourceAsStream(folder + name)) {
            if (in == null) {
                throw new IllegalArgumentException("there is no built-in file " + folder + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
