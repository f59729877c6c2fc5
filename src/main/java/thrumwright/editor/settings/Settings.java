package thrumwright.editor.settings;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/** What the program remembers of how somebody likes to work. Losing it harms nothing. */
public final class Settings {
    private static final int RECENT = 8;

    private final Properties values = new Properties();
    private final Optional<Path> file;

    /** @param file where they are kept; empty: nowhere */
    public Settings(Optional<Path> file) {
        this.file = file;
        file.filter(Files::isRegularFile).ifPresent(this::read);
    }

    /** The usual file on this system. */
    public static Settings ofUser() {
        return new Settings(Optional.of(
                file(System.getProperty("os.name"), System.getenv(), Path.of(System.getProperty("user.home")))));
    }

    /** The folder in which they are kept; empty for those that are kept nowhere. */
    public String folder() {
        return file.map(Path::getParent).map(Path::toString).orElse("");
    }

    static Path file(String system, Map<String, String> environment, Path home) {
        Path folder = home.resolve(".config");
        if (system.startsWith("Windows")) {
            String roaming = environment.get("APPDATA");
            folder = roaming == null ? home.resolve("AppData").resolve("Roaming") : Path.of(roaming);
        } else if (system.startsWith("Mac")) {
            folder = home.resolve("Library").resolve("Preferences");
        } else if (!environment.getOrDefault("XDG_CONFIG_HOME", "").isBlank()) {
            folder = Path.of(environment.get("XDG_CONFIG_HOME"));
        }
        return folder.resolve("thrumwright").resolve("settings.properties");
    }

    private void read(Path from) {
        try {
            values.load(new StringReader(SafeFile.read(from)));
        } catch (FileProblem | IOException | IllegalArgumentException e) {
            values.clear();
        }
    }

    public Optional<String> get(String key) {
        return Optional.ofNullable(values.getProperty(key));
    }

    /** @return whether it could be kept */
    public boolean put(String key, String value) {
        return putAll(Map.of(key, value));
    }

    /** @return whether they could be kept */
    public boolean putAll(Map<String, String> others) {
        if (values.entrySet().containsAll(others.entrySet())) {
            return true;
        }
        values.putAll(others);
        return write();
    }

    private boolean write() {
        if (file.isEmpty()) {
            return true;
        }
        try {
            StringWriter text = new StringWriter();
            values.store(text, null);
            Path folder = file.get().toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            SafeFile.write(file.get(), text.toString());
            return true;
        } catch (IOException | FileProblem e) {
            return false;
        }
    }

    /** Files that were worked on last, the latest first. */
    public List<Path> recent() {
        List<Path> recent = new ArrayList<>();
        for (int i = 0; i < RECENT; i++) {
            get("recent." + i)
                    .filter(text -> !text.isBlank())
                    .flatMap(Settings::path)
                    .ifPresent(recent::add);
        }
        return recent;
    }

    /** Empty if somebody wrote something there that is none on this system. */
    private static Optional<Path> path(String text) {
        try {
            return Optional.of(Path.of(text));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    public void used(Path path) {
        List<Path> recent = new ArrayList<>(recent());
        recent.remove(path.toAbsolutePath());
        recent.add(0, path.toAbsolutePath());
        keep(recent);
    }

    /** A file that is no longer there. */
    public void forget(Path path) {
        List<Path> recent = new ArrayList<>(recent());
        if (recent.remove(path.toAbsolutePath())) {
            keep(recent);
        }
    }

    private void keep(List<Path> recent) {
        for (int i = 0; i < RECENT; i++) {
            values.setProperty("recent." + i, i < recent.size() ? recent.get(i).toString() : "");
        }
        write();
    }
}
