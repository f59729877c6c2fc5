package thrumwright.editor.loom;

import java.awt.Toolkit;
import java.util.Optional;
import thrumwright.editor.settings.Settings;

/** Whether pictures may move: as the weaver chose, else as the system asks. */
public record Stillness(Settings settings) {
    private static final String KEY = "loom.moving";
    /** What desktops with XSETTINGS say of animations; Java hands it on under that name. Others say nothing. */
    private static final String ANIMATIONS = "gnome.Gtk/EnableAnimations";

    public boolean moving() {
        return settings.get(KEY).map(Boolean::valueOf).orElseGet(Stillness::asTheSystemAsks);
    }

    public void choose(boolean moving) {
        settings.put(KEY, String.valueOf(moving));
    }

    private static boolean asTheSystemAsks() {
        return Optional.ofNullable(Toolkit.getDefaultToolkit().getDesktopProperty(ANIMATIONS))
                .map(said -> !said.equals(0))
                .orElse(true);
    }
}
