package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.JSlider;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.Zoom;
import thrumwright.editor.edit.Selection;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/** Looks at the piece from far and near. */
class LookingIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private final Settings settings = new Settings(Optional.empty());
    private FrameFixture frame;
    private EditorWindow editor;
    private PieceCanvas canvas;

    @BeforeEach
    void open() {
        frame = window.show(() -> {
            Workroom room = Rooms.with(settings);
            editor = room.open(Optional.empty());
            return editor.frame();
        });
        canvas = frame.robot().finder().findByName(frame.target(), "canvas", PieceCanvas.class);
        onEventThread(() -> canvas.requestFocusInWindow());
        waitFor("the keyboard at the canvas", () -> onEventThread(canvas::isFocusOwner));
    }

    private Rectangle seen() {
        return onEventThread(canvas::getVisibleRect);
    }

    @Test
    void theClothBecomesSharpAfterEveryStepCloserAndFarther() {
        for (int key : new int[] {KeyEvent.VK_1, KeyEvent.VK_5, KeyEvent.VK_6, KeyEvent.VK_0}) {
            window.press(key, KeyEvent.VK_CONTROL);
            waitFor("a sharp picture", () -> onEventThread(canvas::sharp));
        }
        assertThat(onEventThread(() -> canvas.zoom().kind())).isEqualTo(Zoom.Kind.PIECE);
    }

    @Test
    void comesCloseToTheEndOfTheSelectedBlock() {
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.TOP, "facing"));
            return null;
        });
        window.press(KeyEvent.VK_5, KeyEvent.VK_CONTROL);

        double high = onEventThread(
                () -> canvas.map().spot(Place.TOP, "facing").orElseThrow().middle());
        assertThat(high).isBetween((double) seen().y, seen().getMaxY());
        assertThat(onEventThread(() -> canvas.session().plan().top().height() * canvas.scale()))
                .isCloseTo(seen().height, within(100.0));
    }

    @Test
    void singleEndsStandWellApart() {
        window.press(KeyEvent.VK_6, KeyEvent.VK_CONTROL);
        double apart = onEventThread(() -> canvas.picture().span()
                / (canvas.session().plan().piece().warp().ends() - 1)
                * canvas.scale());
        assertThat(apart).isCloseTo(24, within(0.5));
    }

    @Test
    void keysAndTheSpaceBarMoveTheView() {
        window.press(KeyEvent.VK_6, KeyEvent.VK_CONTROL);
        Rectangle before = seen();
        frame.robot().pressAndReleaseKey(KeyEvent.VK_RIGHT);
        frame.robot().waitForIdle();
        assertThat(seen().x).isGreaterThan(before.x);
        assertThat(seen().y).isEqualTo(before.y);

        Rectangle now = seen();
        Point from = new Point(now.x + now.width / 2, now.y + now.height / 2);
        frame.robot().pressKey(KeyEvent.VK_SPACE);
        frame.robot().pressMouse(canvas, from, MouseButton.LEFT_BUTTON);
        frame.robot().moveMouse(canvas, from.x - 20, from.y - 30);
        frame.robot().waitForIdle();
        frame.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        frame.robot().releaseKey(KeyEvent.VK_SPACE);
        frame.robot().waitForIdle();
        assertThat(seen().x).isEqualTo(now.x + 20);
        assertThat(seen().y).isEqualTo(now.y + 30);
        assertThat(onEventThread(() -> editor.session().history().names())).isEmpty();
    }

    @Test
    void aMeasuredScreenShowsTheTrueSizeAndIsRemembered() {
        frame.menuItem("menu.measure-screen").click();
        DialogFixture dialog = window.dialog("screen");
        JSlider slider = dialog.slider("screen.length").target();
        onEventThread(() -> {
            slider.setValue(500);
            return null;
        });
        dialog.button("screen.done").click();
        frame.robot().waitForIdle();

        assertThat(onEventThread(canvas::scale)).isEqualTo(5);
        window.press(KeyEvent.VK_0, KeyEvent.VK_CONTROL);
        window.press(KeyEvent.VK_4, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(canvas::scale)).isEqualTo(5);
        assertThat(onEventThread(() -> new ScreenScale(settings).of(canvas.getGraphicsConfiguration())))
                .isEqualTo(5);
    }
}
