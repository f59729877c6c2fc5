package thrumwright.testing;

import java.awt.Frame;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.image.ScreenshotTaker;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

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
        return new FrameFixture(robot, frame).show();
    }

    private static void keepPicture(ExtensionContext context) throws IOException {
        Files.createDirectories(SCREENSHOTS);
        Path picture = SCREENSHOTS.resolve(context.getRequiredTestClass().getSimpleName() + "."
                + context.getRequiredTestMethod().getName() + ".png");
        Files.deleteIfExists(picture);
        new ScreenshotTaker().saveDesktopAsPng(picture.toString());
    }

    private void failForWhatNobodyCaught() {
        if (!uncaught.isEmpty()) {
            AssertionError error = new AssertionError("The window threw exceptions that nobody caught.");
            uncaught.forEach(error::addSuppressed);
            throw error;
        }
    }
}
