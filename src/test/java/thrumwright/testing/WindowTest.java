package thrumwright.testing;

import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.awt.Toolkit;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.image.ScreenshotTaker;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import thrumwright.editor.canvas.PieceCanvas;

/**
 * A robot at the mouse and keyboard for one test of a whole window. Register it as a field of a class named
 * {@code ...IT}:
 *
 * <pre>{@code
 * @RegisterExtension
 * final WindowTest window = new WindowTest();
 *
 * @Test
 * void opens() {
 *     window.show(() -> new MyFrame()).button("save").click();
 * }
 * }</pre>
 *
 * <p>Afterwards every window is closed. A test that fails leaves a picture of the screen in {@code target/screenshots},
 * and one whose window threw an exception that nobody caught fails even if all it asserted held.
 */
public final class WindowTest implements BeforeEachCallback, AfterEachCallback {
    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    /** Milliseconds between two looks at a window, and how many looks it must have stayed the same. */
    private static final long STILL_EVERY = 40;

    private static final int STILL_FOR = 6;

    private final List<Throwable> uncaught = new CopyOnWriteArrayList<>();
    private Thread.UncaughtExceptionHandler usualHandler;
    private Robot robot;

    @Override
    public void beforeEach(ExtensionContext context) {
        usualHandler = Thread.getDefaultUncaughtExceptionHandler();
        Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> uncaught.add(thrown));
        FailOnThreadViolationRepaintManager.install();
        // A frame that is older than its robot would never be found.
        robot = BasicRobot.robotWithNewAwtHierarchy();
    }

    @Override
    public void afterEach(ExtensionContext context) throws IOException {
        try {
            if (context.getExecutionException().isPresent() || !uncaught.isEmpty()) {
                keepPicture(context);
            }
        } finally {
            robot.cleanUp();
            closeWhatOpensAgain();
            FailOnThreadViolationRepaintManager.uninstall();
            Thread.setDefaultUncaughtExceptionHandler(usualHandler);
        }
        failForWhatNobodyCaught();
    }

    /** The robot, for what a fixture can't do. */
    public Robot robot() {
        return robot;
    }

    /** Makes a frame on the event thread, shows it in its own size and waits until it is there. */
    public FrameFixture show(Callable<? extends Frame> maker) {
        Frame frame = GuiActionRunner.execute(maker::call);
        FrameFixture fixture = new FrameFixture(robot, frame).show();
        settle(frame);
        return fixture;
    }

    /**
     * Waits until a window lies still: one that was only just put on the screen may still move or lay itself out, and a
     * click meanwhile would miss.
     */
    public void settle(Window window) {
        Object[] before = new Object[1];
        int[] alike = new int[1];
        Pause.pause(new Condition("the window to lie still") {
            @Override
            public boolean test() {
                robot.waitForIdle();
                Pause.pause(STILL_EVERY);
                Object now = GuiActionRunner.execute(
                        () -> List.of(window.isShowing(), window.getBounds(), window.getLocationOnScreen()));
                boolean sharp = GuiActionRunner.execute(() -> sharp(window));
                alike[0] = now.equals(before[0]) && sharp ? alike[0] + 1 : 0;
                before[0] = now;
                return alike[0] >= STILL_FOR;
            }
        });
        Toolkit.getDefaultToolkit().sync();
    }

    /** Whether every canvas shows its cloth as it is, and not yet what it painted before. */
    public static boolean sharp(Container container) {
        boolean sharp = !(container instanceof PieceCanvas canvas) || !canvas.isShowing() || canvas.sharp();
        for (Component child : container.getComponents()) {
            sharp &= !(child instanceof Container inner) || sharp(inner);
        }
        return sharp;
    }

    private static void keepPicture(ExtensionContext context) throws IOException {
        Files.createDirectories(SCREENSHOTS);
        Path picture = SCREENSHOTS.resolve(context.getRequiredTestClass().getSimpleName() + "."
                + context.getRequiredTestMethod().getName() + ".png");
        Files.deleteIfExists(picture);
        new ScreenshotTaker().saveDesktopAsPng(picture.toString());
    }

    /** A question that is closed unanswered may be asked again; left open, it would keep every later test from its window. */
    private static void closeWhatOpensAgain() {
        Pause.pause(new Condition("all windows to be closed") {
            @Override
            public boolean test() {
                return GuiActionRunner.execute(() -> {
                    List<Window> open = Stream.of(Window.getWindows())
                            .filter(Window::isShowing)
                            .toList();
                    open.forEach(Window::dispose);
                    return open.isEmpty();
                });
            }
        });
    }

    private void failForWhatNobodyCaught() {
        if (!uncaught.isEmpty()) {
            AssertionError error = new AssertionError("The window threw exceptions that nobody caught.");
            uncaught.forEach(error::addSuppressed);
            throw error;
        }
    }
}
