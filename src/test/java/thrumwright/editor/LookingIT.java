package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import javax.swing.JSlider;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.OpenWarp;
import thrumwright.block.PlainBand;
import thrumwright.block.Tag;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.settings.ScreenScale;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/** Looks at the piece from far and near, with the views unfolded below it. */
class LookingIT {
    private static final int VK_SELVEDGES = KeyEvent.VK_1;

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
        frame.toggleButton("views.fold").click();
        canvas = frame.robot().finder().findByName(frame.target(), "canvas", PieceCanvas.class);
        onEventThread(() -> canvas.requestFocusInWindow());
        waitFor("the keyboard at the canvas", () -> onEventThread(canvas::isFocusOwner));
    }

    private Rectangle seen() {
        return onEventThread(canvas::getVisibleRect);
    }

    @Test
    void theClothBecomesSharpAfterEveryStepCloserAndFarther() {
        for (int key : new int[] {KeyEvent.VK_0, KeyEvent.VK_5, KeyEvent.VK_6, KeyEvent.VK_1}) {
            window.press(key, KeyEvent.VK_CONTROL);
            waitFor("a sharp picture", () -> onEventThread(canvas::sharp));
        }
        assertThat(onEventThread(() -> canvas.zoom().fit())).isEqualTo(Zoom.Fit.SELVEDGES);
    }

    @Test
    void comesCloseToTheTop() {
        window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);

        double high = onEventThread(
                () -> canvas.map().spot(Place.TOP, "facing").orElseThrow().middle());
        assertThat(high).isBetween((double) seen().y, seen().getMaxY());
        double fitting = (seen().height - 72)
                / onEventThread(() -> canvas.session().plan().top().height());
        assertThat(onEventThread(canvas::scale)).isCloseTo(Math.min(fitting, atAnEnd()), within(0.1));
    }

    private double atAnEnd() {
        return 27 / onEventThread(() -> canvas.session().plan().piece().warp().spacing());
    }

    /** An end of few rows is not shown as close as single warp ends; a high one as a whole. */
    @Test
    void anEndComesAsCloseAsItsHeightAllows() {
        change(piece ->
                piece.withStart(new End(List.of(piece.start().block("twining").orElseThrow()))));
        window.press(KeyEvent.VK_2, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(canvas::scale)).isGreaterThanOrEqualTo(atAnEnd());

        high(120);
        window.press(KeyEvent.VK_2, KeyEvent.VK_CONTROL);
        double high = onEventThread(() -> canvas.session().plan().start().height() * canvas.scale());
        assertThat(high).isBetween(seen().height - 110.0, (double) seen().height);
    }

    private void change(UnaryOperator<Piece> change) {
        onEventThread(() -> {
            editor.edit(new Edit("change", change, Optional.empty()));
            return null;
        });
        frame.robot().waitForIdle();
    }

    /** Adds open warp below all else. */
    private void high(double mm) {
        change(piece -> {
            List<Block> blocks = new ArrayList<>(piece.start().blocks());
            blocks.add(0, new OpenWarp(Tag.of("gap" + blocks.size()), Length.of(mm, Unit.MILLIMETRE)));
            return piece.withStart(new End(blocks));
        });
    }

    private double inWindow(Place place, String id) {
        return onEventThread(() -> canvas.map().spot(place, id).orElseThrow().bottom() - canvas.getVisibleRect().y);
    }

    @Test
    void whatIsLookedAtStaysWhileBlocksGrow() {
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.START, "stiff"));
            return null;
        });
        for (int key : new int[] {KeyEvent.VK_6, KeyEvent.VK_2, VK_SELVEDGES}) {
            window.press(key, KeyEvent.VK_CONTROL);
            onEventThread(() -> {
                canvas.reveal(Place.START, "stiff");
                return null;
            });
            double before = inWindow(Place.START, "stiff");
            // both selvedges are fitted anew once an end has far outgrown its room
            for (int picks : key == VK_SELVEDGES ? new int[] {8, 10, 5} : new int[] {20, 60, 3}) {
                change(piece -> piece.withStart(piece.start()
                        .replaced(((PlainBand) piece.start().block("stiff").orElseThrow())
                                .withAmount(new Amount.Picks(picks)))));
                assertThat(inWindow(Place.START, "stiff")).as("with key " + key).isCloseTo(before, within(1.0));
            }
        }
    }

    @Test
    void aBlockAddedBelowTheWindowMovesNothingInIt() {
        window.press(KeyEvent.VK_6, KeyEvent.VK_CONTROL);
        window.press(KeyEvent.VK_PAGE_UP);
        double before = inWindow(Place.TOP, "stiff");
        assertThat(before).isBetween(0.0, (double) seen().height);
        high(50);
        assertThat(inWindow(Place.TOP, "stiff")).isCloseTo(before, within(1.0));
        window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(inWindow(Place.TOP, "stiff")).isCloseTo(before, within(1.0));
    }

    @Test
    void singleEndsStandWellApart() {
        window.press(KeyEvent.VK_6, KeyEvent.VK_CONTROL);
        double apart = onEventThread(() -> canvas.picture().span()
                / (canvas.session().plan().piece().warp().ends() - 1)
                * canvas.scale());
        assertThat(apart).isCloseTo(36, within(0.5));
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
        int below = onEventThread(() -> {
            JComponent done = dialog.button("screen.done").target();
            return dialog.target().getHeight()
                    - SwingUtilities.convertPoint(done, 0, done.getHeight(), dialog.target()).y;
        });
        assertThat(below).as("nothing but a border below the buttons").isLessThan(40);
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
