package thrumwright.store;

import java.nio.file.Path;
import java.util.Map;

/** Where the weaver's own structures lie, by the custom of each system. */
public final class UserFolder {
    private UserFolder() {}

    /**
     * The folder for this system; it need not be there.
     *
     * @param system as in the system property {@code os.name}
     * @param environment the environment variables
     * @param home the user's home folder
     */
    public static Path structures(String system, Map<String, String> environment, Path home) {
        return data(system, environment, home).resolve("thrumwright").resolve("structures");
    }

    /** The folder for this system and user. */
    public static Path structures() {
        return structures(System.getProperty("os.name"), System.getenv(), Path.of(System.getProperty("user.home")));
    }

    private static Path data(String system, Map<String, String> environment, Path home) {
        if (system.startsWith("Windows")) {
            String roaming = environment.get("APPDATA");
            return roaming != null ? Path.of(roaming) : home.resolve("AppData").resolve("Roaming");
        }
        if (system.startsWith("Mac")) {
            return home.resolve("Library").resolve("Application Support");
        }
        String data = environment.get("XDG_DATA_HOME");
        return data != null && !data.isBlank()
                ? Path.of(data)
                : home.resolve(".local").resolve("share");
    }
}
