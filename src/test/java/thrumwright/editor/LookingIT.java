package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.swing.JSlider;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.Zoom;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.library.Library;
import thrumwright.piece.Place;
import thrumwright.store.Structures;
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
            Workroom room =
                    new Workroom(settings, Library.fixed(Structures.builtIn().all()));
            editor = room.open(Optional.empty());
            return editor.frame();
        });
        canvas = frame.robot().finder().findByName(frame.target(), "canvas", PieceCanvas.class);
        onEventThread(() -> canvas.requestFocusInWindow());
        waitFor("the keyboard at the canvas", () -> onEventThread(canvas::isFocusOwner));
    }

    private static <T> T onEventThread(Callable<T> work) {
        return GuiActionRunner.execute(work);
    }

    private void waitFor(String what, java.util.function.BooleanSupplier there) {
        Pause.pause(new Condition(what) {
            @Override
            public boolean test() {
                frame.robot().waitForIdle();
                return there.getAsBoolean();
            }
        });
    }

    private void menuKey(int key) {
        frame.robot().pressKey(KeyEvent.VK_CONTROL);
        frame.robot().pressAndReleaseKey(key);
        frame.robot().releaseKey(KeyEvent.VK_CONTROL);
        frame.robot().waitForIdle();
    }

    private Rectangle seen() {
        return onEventThread(canvas::getVisibleRect);
    }

    @Test
    void theClothBecomesSharpAfterEveryStepCloserAndFarther() {
        for (int key : new int[] {KeyEvent.VK_1, KeyEvent.VK_5, KeyEvent.VK_6, KeyEvent.VK_0}) {
            menuKey(key);
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
        menuKey(KeyEvent.VK_5);

        double high = onEventThread(
                () -> canvas.map().spot(Place.TOP, "facing").orElseThrow().middle());
        assertThat(high).isBetween((double) seen().y, seen().getMaxY());
        assertThat(onEventThread(() -> canvas.session().plan().top().height() * canvas.scale()))
                .isCloseTo(seen().height, within(100.0));
    }

    @Test
    void singleEndsStandWellApart() {
        menuKey(KeyEvent.VK_6);
        double apart = onEventThread(() -> canvas.picture().span()
                / (canvas.session().plan().piece().warp().ends() - 1)
                * canvas.scale());
        assertThat(apart).isCloseTo(24, within(0.5));
    }

    @Test
    void keysAndTheSpaceBarMoveTheView() {
        menuKey(KeyEvent.VK_6);
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
        DialogFixture dialog = WindowFinder.findDialog("screen").using(frame.robot());
        window.settle(dialog.target());
        JSlider slider = dialog.slider("screen.length").target();
        onEventThread(() -> {
            slider.setValue(500);
            return null;
        });
        dialog.button("screen.done").click();
        frame.robot().waitForIdle();

        assertThat(onEventThread(canvas::scale)).isEqualTo(5);
        menuKey(KeyEvent.VK_0);
        menuKey(KeyEvent.VK_4);
        assertThat(onEventThread(canvas::scale)).isEqualTo(5);
        assertThat(onEventThread(() -> new ScreenScale(settings).of(canvas.getGraphicsConfiguration())))
                .isEqualTo(5);
    }
}
