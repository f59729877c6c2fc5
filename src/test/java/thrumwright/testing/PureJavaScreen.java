package thrumwright.testing;

import java.awt.Toolkit;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.Collection;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.assertj.swing.edt.GuiActionRunner;
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

    /**
     * Waits until the windows on this screen have been given all that the mouse and the keys did, and have nothing left to
     * do. The toolkit's own waiting would sleep for ten milliseconds at least, since it can't know when a screen has no
     * more to tell; this one is asked.
     */
    static void waitForTheAnswer() {
        int quiet = 0;
        while (quiet < 2) {
            boolean calm = handOver();
            calm &= GuiActionRunner.execute(
                    () -> Toolkit.getDefaultToolkit().getSystemEventQueue().peekEvent() == null);
            quiet = calm ? quiet + 1 : 0;
        }
    }

    /** @return whether all had been handed over already */
    private static boolean handOver() {
        boolean calm = true;
        // in this order: what is no longer there may still be on its way to a window
        while (!(done().isEmpty() && Pump.waitsForMore())) {
            LockSupport.parkNanos(100_000);
            calm = false;
        }
        return calm;
    }

    /** The thread that hands events over, found when the screen is first used. */
    private static final class Pump {
        static final Thread THREAD = Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("CacioEventPump"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nobody hands over what the mouse and the keys do"));

        private Pump() {}

        static boolean waitsForMore() {
            return Stream.of(THREAD.getStackTrace())
                    .anyMatch(frame -> frame.getClassName().equals(LinkedBlockingQueue.class.getName())
                            && frame.getMethodName().equals("take"));
        }
    }

    /** What the mouse and the keys did and the windows have not been given yet. */
    private static Collection<?> done() {
        try {
            Class<?> source = Class.forName("com.github.caciocavallosilano.cacio.ctc.CTCEventSource");
            Method instance = source.getDeclaredMethod("getInstance");
            instance.setAccessible(true);
            Field queue = source.getDeclaredField("queue");
            queue.setAccessible(true);
            return (Collection<?>) queue.get(instance.invoke(null));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("The screen drawn in Java keeps its events otherwise than it did.", e);
        }
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
