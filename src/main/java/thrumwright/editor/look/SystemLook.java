package thrumwright.editor.look;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Whether the system that the program runs on is dark; asked in the way that each has, and light where none answers.
 *
 * @param question the system's own command
 * @param dark what its answer has in it then
 */
record SystemLook(List<String> question, String dark) {
    /** Nobody waits longer for a window to open, ms. */
    private static final long PATIENCE = 1000;

    private static final String WINDOWS = "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize";

    /** @param system as Java names it, such as {@code Mac OS X} */
    static SystemLook of(String system) {
        if (system.startsWith("Mac")) {
            return new SystemLook(List.of("defaults", "read", "-g", "AppleInterfaceStyle"), "dark");
        } else if (system.startsWith("Windows")) {
            return new SystemLook(List.of("reg", "query", WINDOWS, "/v", "AppsUseLightTheme"), "0x0");
        }
        return new SystemLook(List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"), "dark");
    }

    Theme theme() {
        return answer().toLowerCase(Locale.ROOT).contains(dark) ? Theme.DARK : Theme.LIGHT;
    }

    /** Nothing if the system has no such command, or takes too long. */
    private String answer() {
        try {
            Process asked =
                    new ProcessBuilder(question).redirectErrorStream(true).start();
            asked.getOutputStream().close();
            if (asked.waitFor(PATIENCE, TimeUnit.MILLISECONDS)) {
                return new String(asked.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            }
            asked.destroy();
        } catch (IOException e) {
            return "";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return "";
    }
}
