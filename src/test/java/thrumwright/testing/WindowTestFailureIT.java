package thrumwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectMethod;
import static org.junit.platform.testkit.engine.EventConditions.event;
import static org.junit.platform.testkit.engine.EventConditions.finishedWithFailure;
import static org.junit.platform.testkit.engine.TestExecutionResultConditions.instanceOf;
import static org.junit.platform.testkit.engine.TestExecutionResultConditions.message;
import static org.junit.platform.testkit.engine.TestExecutionResultConditions.suppressed;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.FlowLayout;
import java.awt.Frame;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.platform.testkit.engine.EngineTestKit;
import org.junit.platform.testkit.engine.Events;

/** A window test has to fail when it should; this runs some that must, each in a test run of its own. */
class WindowTestFailureIT {
    private static final Color MARSH = new Color(0x2F6B5E);
    private static final Path PICTURES = Path.of("target", "screenshots");

    @BeforeEach
    @AfterEach
    void forgetPictures() throws Exception {
        for (String test : new String[] {
            "asserts", "throwsInAButton", "touchesFromTheWrongThread", "leavesAQuestionThatIsAskedAgain"
        }) {
            Files.deleteIfExists(picture(test));
        }
    }

    @Test
    void aFailedAssertionLeavesAPictureOfTheWindow() throws Exception {
        Events tests = run("asserts");

        tests.assertThatEvents().haveExactly(1, event(finishedWithFailure(message("as it should"))));
        BufferedImage picture = ImageIO.read(picture("asserts").toFile());
        int[] pixels = picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
        assertThat(Arrays.stream(pixels)
                        .filter(pixel -> pixel == MARSH.getRGB())
                        .count())
                .as("pixels in the colour of the window")
                .isGreaterThan(20_000);
    }

    @Test
    void anExceptionThatNobodyCaughtFailsTheTest() {
        Events tests = run("throwsInAButton");

        tests.assertThatEvents()
                .haveExactly(
                        1,
                        event(finishedWithFailure(
                                instanceOf(AssertionError.class),
                                suppressed(0, instanceOf(ArithmeticException.class)))));
        assertThat(picture("throwsInAButton")).exists();
    }

    @Test
    void aComponentMadeOutsideTheEventThreadFailsTheTest() {
        Events tests = run("touchesFromTheWrongThread");

        tests.assertThatEvents().haveExactly(1, event(finishedWithFailure()));
    }

    @Test
    void everyWindowIsClosedAfterwards() {
        run("asserts");

        assertThat(GuiActionRunner.execute(
                        () -> Arrays.stream(Frame.getFrames()).anyMatch(Frame::isShowing)))
                .isFalse();
    }

    /** Left open, it would keep every later test from its window. */
    @Test
    void aQuestionThatIsAskedAgainWhenItIsClosedIsClosedToo() {
        run("leavesAQuestionThatIsAskedAgain");

        assertThat(GuiActionRunner.execute(
                        () -> Arrays.stream(Window.getWindows()).anyMatch(Window::isShowing)))
                .isFalse();
    }

    private static Events run(String test) {
        Events tests = EngineTestKit.engine("junit-jupiter")
                .selectors(selectMethod(MustFail.class, test))
                .execute()
                .testEvents();
        tests.assertStatistics(statistics -> statistics.started(1).failed(1));
        return tests;
    }

    private static Path picture(String test) {
        return PICTURES.resolve("MustFail." + test + ".png");
    }

    static class MustFail {
        @RegisterExtension
        final WindowTest window = new WindowTest();

        @Test
        void asserts() {
            window.show(MustFail::painted);

            throw new AssertionError("as it should");
        }

        @Test
        void throwsInAButton() {
            window.show(MustFail::painted).button("divide").click();
        }

        @Test
        void touchesFromTheWrongThread() {
            new JButton("made outside the event thread").setText("changed there too");
        }

        @Test
        void leavesAQuestionThatIsAskedAgain() {
            FrameFixture frame = window.show(MustFail::painted);
            EventQueue.invokeLater(() -> {
                for (int i = 0; i < 3; i++) {
                    JOptionPane.showConfirmDialog(frame.target(), "Well?");
                }
            });
            frame.optionPane().requireVisible();

            throw new AssertionError("as it should");
        }

        private static JFrame painted() {
            JButton divide = new JButton("Divide");
            divide.setName("divide");
            divide.addActionListener(e -> {
                throw new ArithmeticException("nothing to divide by");
            });
            JFrame frame = new JFrame("Must fail");
            frame.getContentPane().setBackground(MARSH);
            frame.setLayout(new FlowLayout());
            frame.add(divide);
            frame.setPreferredSize(new Dimension(300, 200));
            frame.pack();
            return frame;
        }
    }
}
