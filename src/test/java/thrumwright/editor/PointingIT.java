package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JTextField;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.block.Side;
import thrumwright.drawing.yarn.Tail;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.piece.Place;
import thrumwright.plan.Hem;
import thrumwright.testing.WindowTest;

/** What stands beside the piece on the board is pointed at, clicked and typed over. */
class PointingIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private FrameFixture frame;
    private EditorWindow editor;
    private PieceCanvas canvas;
    private Hands hands;

    @BeforeEach
    void open() {
        frame = window.show(() -> {
            editor = Rooms.with(new Settings(Optional.empty())).open(Optional.empty());
            return editor.frame();
        });
        hands = new Hands(window, editor);
        canvas = hands.find("canvas", PieceCanvas.class);
        onEventThread(() -> canvas.requestFocusInWindow());
        waitFor("the keyboard at the canvas", () -> onEventThread(canvas::isFocusOwner));
        window.press(KeyEvent.VK_1, KeyEvent.VK_CONTROL);
        hands.settle();
    }

    private String tip(Point point) {
        return onEventThread(() -> canvas.getToolTipText(
                new MouseEvent(canvas, MouseEvent.MOUSE_MOVED, 0, 0, point.x, point.y, 0, false)));
    }

    /** A figure at the left, at that height of the canvas. */
    private Point figure(double y) {
        int left = onEventThread(() -> canvas.getVisibleRect().x);
        return IntStream.range(0, 40)
                .mapToObj(i -> new Point(left + 4 * i, (int) Math.round(y)))
                .filter(point -> "Click to type another one".equals(tip(point)))
                .findFirst()
                .orElseThrow();
    }

    private double hemDepth() {
        return onEventThread(
                () -> editor.session().plan().start().hem().map(Hem::depth).orElseThrow());
    }

    /** The middle of the start's hem as it lies on the canvas. */
    private double hemMiddle() {
        return onEventThread(() -> {
            var end = editor.session().plan().start();
            double fold = canvas.map().y(Place.START, end.hem().orElseThrow().foldLine());
            return (fold + canvas.map().y(Place.START, end.edge())) / 2;
        });
    }

    @Test
    void aHemsDepthIsClickedAndAnotherTyped() {
        double before = hemDepth();
        hands.click(canvas, figure(hemMiddle()));
        hands.waitForFocus("figureEntry");
        hands.type("25 mm");
        hands.key(KeyEvent.VK_ENTER);
        assertThat(before).isLessThan(20);
        assertThat(hemDepth()).isCloseTo(25, within(1.1));
        assertThat(onEventThread(() -> editor.session().history().names())).hasSize(1);
    }

    @Test
    void warpKeptFreeIsTypedOverAndEscapeLeavesIt() {
        double low = onEventThread(() ->
                (canvas.map().height(canvas.picture().lowerBar()) + canvas.map().height(0)) / 2);
        hands.click(canvas, figure(low));
        hands.waitForFocus("figureEntry");
        hands.type("99 cm");
        hands.key(KeyEvent.VK_ESCAPE);
        assertThat(onEventThread(() -> editor.session().history().names())).isEmpty();

        hands.click(canvas, figure(low));
        hands.waitForFocus("figureEntry");
        hands.type("7 cm");
        hands.key(KeyEvent.VK_ENTER);
        assertThat(onEventThread(() -> editor.session().piece().loom().clearance()))
                .contains(Length.parse("7 cm"));
    }

    @Test
    void whatCantBeIsToldWhereItIsTyped() {
        hands.click(canvas, figure(hemMiddle()));
        hands.waitForFocus("figureEntry");
        hands.type("deep");
        hands.key(KeyEvent.VK_ENTER);
        JTextField field = hands.find("figureEntry", JTextField.class);
        assertThat(onEventThread(() -> field.getToolTipText())).contains("deep").contains("is not a length");
        assertThat(onEventThread(field::isShowing)).isTrue();
    }

    @Test
    void aTailSaysWhoseItIs() {
        Point at = onEventThread(() -> {
            Tail tail = canvas.picture().tails(Place.START).stream()
                    .filter(hung -> hung.side() == Side.LEFT)
                    .findFirst()
                    .orElseThrow();
            return new Point((int) canvas.map().x(-tail.out()), (int)
                    canvas.map().y(Place.START, tail.y() - tail.down() / 2));
        });
        assertThat(tip(at)).startsWith("Tail of ").endsWith("15 cm stay hanging at the left");
        assertThat(tip(new Point(at.x, 2))).isNull();
    }

    /** The middle comes into sight as the view moves sideways, at the same scale; the selvedge that is left stays at first. */
    @Test
    void aTornViewMovesSideways() {
        double scale = onEventThread(canvas::scale);
        double middle = onEventThread(() -> canvas.picture().span() / 2);
        assertThat(onEventThread(() -> canvas.map().axes().across().shows(middle)))
                .isFalse();
        frame.robot().pressAndReleaseKey(KeyEvent.VK_RIGHT);
        frame.robot().waitForIdle();
        assertThat(onEventThread(() -> canvas.map().axes().across().shows(middle)))
                .isTrue();
        assertThat(onEventThread(canvas::scale)).isEqualTo(scale);
        assertThat(onEventThread(() -> canvas.zoom().fit())).isEqualTo(Zoom.Fit.FREE);
        assertThat(fromWindow(0)).isBetween(-250.0, 250.0);
    }

    private double fromWindow(double mm) {
        return onEventThread(() -> canvas.map().x(mm) - canvas.getVisibleRect().x);
    }

    @Test
    void aTornViewIsDraggedSideways() {
        double edge = onEventThread(() -> canvas.picture().span());
        double before = fromWindow(edge);
        Point from = onEventThread(() -> new Point((int) canvas.getVisibleRect().getCenterX(), (int)
                canvas.getVisibleRect().getCenterY()));
        frame.robot().pressKey(KeyEvent.VK_SPACE);
        frame.robot().pressMouse(canvas, from, MouseButton.LEFT_BUTTON);
        frame.robot().moveMouse(canvas, from.x + 30, from.y);
        frame.robot().waitForIdle();
        frame.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        frame.robot().releaseKey(KeyEvent.VK_SPACE);
        frame.robot().waitForIdle();
        assertThat(onEventThread(() -> canvas.zoom().fit())).isEqualTo(Zoom.Fit.FREE);
        assertThat(fromWindow(edge)).isCloseTo(before + 30, within(2.0));
    }
}
