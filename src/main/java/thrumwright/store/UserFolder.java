package thrumwright.store;

import java.nio.file.Path;
import java.util.Map;

/** Where the program's own files of a user lie, by the custom of each system. */
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

    /**
     * The folder of what the program keeps for itself, such as journals; it need not be there.
     *
     * @param system as in the system property {@code os.name}
     * @param environment the environment variables
     * @param home the user's home folder
     */
    public static Path state(String system, Map<String, String> environment, Path home) {
        return ownState(system, environment, home).resolve("thrumwright").resolve("state");
    }

    /** The folder for this system and user. */
    public static Path state() {
        return state(System.getProperty("os.name"), System.getenv(), Path.of(System.getProperty("user.home")));
    }

    /** Where letters are kept that the system wants as files; it need not be there. */
    public static Path fonts() {
        return state().resolve("fonts");
    }

    private static Path ownState(String system, Map<String, String> environment, Path home) {
        if (system.startsWith("Windows")) {
            String local = environment.get("LOCALAPPDATA");
            return local != null ? Path.of(local) : home.resolve("AppData").resolve("Local");
        }
        if (system.startsWith("Mac")) {
            return home.resolve("Library").resolve("Application Support");
        }
        String state = environment.get("XDG_STATE_HOME");
        return state != null && !state.isBlank()
                ? Path.of(state)
                : home.resolve(".local").resolve("state");
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
