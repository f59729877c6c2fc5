package thrumwright.testing;

import org.junit.platform.launcher.LauncherSession;
import org.junit.platform.launcher.LauncherSessionListener;

/**
 * Gives the window tests a screen drawn in plain Java where the machine has none.
 *
 * <p>The build asks for it by the property {@value #SIZE}, which it only sets when there is no display, together with
 * the flags the screen needs. It has to be in place before anything touches a window, hence this listener.
 */
public final class PureJavaScreen implements LauncherSessionListener {
    static final String SIZE = "cacio.managed.screensize";

    private static final String INSTALLER = "com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension";
    private static final int NEWEST_JAVA = 21;

    @Override
    public void launcherSessionOpened(LauncherSession session) {
        if (isAskedFor()) {
            install();
        }
    }

    /** Whether the windows stand on the screen drawn in Java, which knows no mouse wheel and no Alt key. */
    public static boolean isAskedFor() {
        return System.getProperty(SIZE) != null;
    }

    private static void install() {
        int java = Runtime.version().feature();
        if (java > NEWEST_JAVA) {
            throw new IllegalStateException("There is no display, and without one the window tests need Java 17 to "
                    + NEWEST_JAVA + ", but this is " + java
                    + ". Run them with an older Java, or on an X screen, for instance with xvfb-run.");
        }
        try {
            Class.forName(INSTALLER);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException("The screen drawn in Java is not among the test libraries.", e);
        }
    }
}
