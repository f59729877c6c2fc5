package thrumwright.testing;

import com.formdev.flatlaf.FlatSystemProperties;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Frame;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.exception.WaitTimedOutError;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.assertj.swing.fixture.JTextComponentFixture;
import org.assertj.swing.image.ScreenshotTaker;
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
    static {
        // a system's own dialog can't be driven from here
        System.setProperty(FlatSystemProperties.USE_SYSTEM_FILE_CHOOSER, "false");
    }

    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    /** Milliseconds between two looks at a window on a real screen. */
    private static final long STILL_EVERY = 40;

    /** How many looks it must have stayed the same: a screen of its own moves nothing later. */
    private static final int STILL_FOR = PureJavaScreen.isAskedFor() ? 1 : 6;

    /** Milliseconds in which a thing must have come, on a machine that has very much else to do. */
    static final int PATIENCE = 120_000;

    private final List<Throwable> uncaught = new CopyOnWriteArrayList<>();
    private Thread.UncaughtExceptionHandler usualHandler;
    private Robot robot;

    @Override
    public void beforeEach(ExtensionContext context) throws AWTException {
        usualHandler = Thread.getDefaultUncaughtExceptionHandler();
        Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> uncaught.add(thrown));
        FailOnThreadViolationRepaintManager.install();
        robot = AnsweredRobot.make();
    }

    @Override
    public void afterEach(ExtensionContext context) throws IOException, InterruptedException {
        try {
            if (context.getExecutionException().isPresent() || !uncaught.isEmpty()) {
                keepPicture(context);
            }
        } finally {
            robot.cleanUp();
            closeWhatOpensAgain();
            GuiActionRunner.execute(WindowTest::emptyWhatIsClosed);
            FailOnThreadViolationRepaintManager.uninstall();
            Thread.setDefaultUncaughtExceptionHandler(usualHandler);
            waitForWhatIsKept();
        }
        failForWhatNobodyCaught();
    }

    /** What isn't saved is kept beside the window, in a folder that may be taken away with the test. */
    private static void waitForWhatIsKept() throws InterruptedException {
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (thread.getName().equals("journals")) {
                thread.join(PATIENCE);
            }
        }
    }

    /** The robot, for what a fixture can't do. */
    public Robot robot() {
        return robot;
    }

    /** What a question to the window comes to, asked where windows may be asked. */
    public static <T> T onEventThread(Callable<T> work) {
        return GuiActionRunner.execute(work);
    }

    /** What a window says over its foot; nothing if it says nothing. */
    public static String message(Window window) {
        return onEventThread(() -> said(window));
    }

    private static String said(Container within) {
        for (Component each : within.getComponents()) {
            boolean message = "message".equals(each.getName()) && each.isShowing();
            String said = message ? ((JTextArea) each).getText() : each instanceof Container inner ? said(inner) : "";
            if (!said.isEmpty()) {
                return said;
            }
        }
        return "";
    }

    /** Waits until something holds that is still on its way; fails if it does not come. */
    public static void waitFor(String what, Callable<Boolean> there) {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE);
        for (long pause = 1; !holds(what, there); pause = Math.min(2 * pause, 16)) {
            if (System.nanoTime() > end) {
                throw new WaitTimedOutError("Timed out waiting for " + what);
            }
            Pause.pause(pause);
        }
    }

    private static boolean holds(String what, Callable<Boolean> there) {
        try {
            return there.call();
        } catch (Exception e) {
            throw new AssertionError(what, e);
        }
    }

    /** Presses a key in the window that has the keyboard, with others held down, and waits for the answer. */
    public void press(int key, int... held) {
        robot.waitForIdle();
        for (int each : held) {
            robot.pressKey(each);
        }
        robot.pressAndReleaseKey(key);
        for (int each : held) {
            robot.releaseKey(each);
        }
        robot.waitForIdle();
    }

    /** From now on nothing is painted anew: where things lie and what they hold is known without, in a third of the time. */
    public void paintNoMore() {
        GuiActionRunner.execute(() -> RepaintManager.setCurrentManager(new Unpainted()));
    }

    /** Still minds on which thread components are touched, and still lays out what has changed. */
    private static final class Unpainted extends FailOnThreadViolationRepaintManager {
        @Override
        public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
            super.addDirtyRegion(component, x, y, 0, 0);
        }
    }

    /** Goes into a field and types over what stands there. */
    public void typeOver(FrameFixture in, String field, String text) {
        JTextComponentFixture box = in.textBox(field).focus();
        // a dialog that has just gone may give it back only now, to what had it before
        waitFor(
                "the keyboard at " + field,
                () -> onEventThread(() -> {
                    boolean has = box.target().isFocusOwner();
                    return has
                            || box.target().requestFocusInWindow()
                                    && box.target().isFocusOwner();
                }));
        box.selectAll();
        box.enterText(text);
        robot.waitForIdle();
    }

    /** Makes a frame on the event thread, shows it in its own size and waits until it is there. */
    public FrameFixture show(Callable<? extends Frame> maker) {
        Frame frame = GuiActionRunner.execute(maker::call);
        FrameFixture fixture = new FrameFixture(robot, frame);
        if (PureJavaScreen.isAskedFor()) {
            showAtOnce(frame);
        } else {
            fixture.show();
        }
        settle(frame);
        return fixture;
    }

    /** As the library does, which then waits for the mouse to have been seen in it; whoever clicks there waits for that too. */
    private void showAtOnce(Frame frame) {
        GuiActionRunner.execute(() -> {
            frame.pack();
            frame.setLocation(100, 100);
            frame.setVisible(true);
        });
        robot.waitForIdle();
    }

    /** The dialog of that name, as soon as it lies still. */
    public DialogFixture dialog(String name) {
        DialogFixture dialog =
                WindowFinder.findDialog(name).withTimeout(PATIENCE).using(robot);
        settle(dialog.target());
        return dialog;
    }

    /** The frame of that name, as soon as it lies still. */
    public FrameFixture frame(String name) {
        FrameFixture frame = WindowFinder.findFrame(name).withTimeout(PATIENCE).using(robot);
        settle(frame.target());
        return frame;
    }

    /** The question that is asked, as soon as it lies still. */
    public JOptionPaneFixture question() {
        JOptionPaneFixture question =
                JOptionPaneFinder.findOptionPane().withTimeout(PATIENCE).using(robot);
        settle(SwingUtilities.getWindowAncestor(question.target()));
        return question;
    }

    /** The dialog in which files are chosen, as soon as it lies still. */
    public JFileChooserFixture files() {
        JFileChooserFixture files = JFileChooserFinder.findFileChooser("files")
                .withTimeout(PATIENCE)
                .using(robot);
        settle(SwingUtilities.getWindowAncestor(files.target()));
        return files;
    }

    /**
     * Waits until a window lies still: one that was only just put on the screen may still move or lay itself out, and a
     * click meanwhile would miss.
     */
    public void settle(Window window) {
        waitUntilStill(window);
        if (!PureJavaScreen.isAskedFor()) {
            sayWhereItIs(window);
        }
        Toolkit.getDefaultToolkit().sync();
    }

    private void waitUntilStill(Window window) {
        Object[] before = new Object[1];
        int[] alike = new int[1];
        waitFor("the window to lie still", () -> {
            if (PureJavaScreen.isAskedFor()) {
                robot.waitForIdle();
            } else {
                Pause.pause(STILL_EVERY);
            }
            Object now = onEventThread(() -> sharp(window)
                    ? List.of(window.isShowing(), window.getBounds(), window.getLocationOnScreen())
                    : window);
            alike[0] = now.equals(before[0]) && now != window ? alike[0] + 1 : 0;
            before[0] = now;
            return alike[0] >= STILL_FOR;
        });
        robot.waitForIdle();
    }

    /**
     * On an X screen without a window manager the toolkit can lose a window: if the screen's notice of its first size
     * comes in the middle of its first move, as it does now and then for a dialog that is packed and then centred, the
     * toolkit goes on believing that the window lies in the corner, and whatever is clicked in it is missed. A step aside
     * and back, when no notice is on its way any more, brings both together again.
     */
    private static void sayWhereItIs(Window window) {
        GuiActionRunner.execute(() -> {
            Point place = window.getLocation();
            window.setLocation(place.x, place.y + 1);
            window.setLocation(place);
        });
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
        waitFor(
                "all windows to be closed",
                () -> onEventThread(() -> {
                    List<Window> open = Stream.of(Window.getWindows())
                            .filter(Window::isShowing)
                            .toList();
                    open.forEach(Window::dispose);
                    return open.isEmpty();
                }));
    }

    /** The toolkit knows closed windows for a while yet, and the look of the next test would dress all that is in them. */
    private static void emptyWhatIsClosed() {
        Stream.of(Window.getWindows())
                .filter(window -> window instanceof Frame || window instanceof Dialog)
                .forEach(Container::removeAll);
    }

    private void failForWhatNobodyCaught() {
        if (!uncaught.isEmpty()) {
            AssertionError error = new AssertionError("The window threw exceptions that nobody caught.");
            uncaught.forEach(error::addSuppressed);
            throw error;
        }
    }
}
