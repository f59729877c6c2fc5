package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.Zoom;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.piece.Place;
import thrumwright.testing.RealScreenOnly;
import thrumwright.testing.WindowTest;

/** Works on the canvas with mouse and keyboard. */
class GesturesIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private FrameFixture frame;
    private Session session;
    private PieceCanvas canvas;
    private Hands hands;

    @BeforeEach
    void open() {
        EditorWindow[] editor = new EditorWindow[1];
        frame = window.show(() -> {
            Workroom room = Rooms.forgetful();
            editor[0] = room.open(Optional.empty());
            return editor[0].frame();
        });
        session = editor[0].session();
        hands = new Hands(window, editor[0]);
        canvas = hands.canvas();
    }

    private void select(String id) {
        onEventThread(() -> {
            session.select(Selection.of(Place.START, id));
            return null;
        });
        hands.focusCanvas();
    }

    private Point on(String id, boolean edge) {
        return hands.on(Place.START, id, edge);
    }

    private void press(Point point) {
        hands.press(canvas, point);
    }

    private void dragTo(Point point) {
        hands.dragTo(canvas, point);
    }

    private String amount(String id) {
        return onEventThread(
                () -> Amounts.text(session.piece().start().block(id).orElseThrow()));
    }

    private String shown(String id) {
        return onEventThread(
                () -> Amounts.text(session.shown().start().block(id).orElseThrow()));
    }

    private List<String> ids() {
        return hands.ids(Place.START);
    }

    @Test
    void pullingAnEdgeTriesWholePicksAndOneReleaseIsOneStep() {
        select("waste");
        Point edge = on("waste", true);
        double scale = onEventThread(() -> canvas.scale());

        press(edge);
        dragTo(new Point(edge.x, (int) Math.round(edge.y - 8 * scale)));
        waitFor("20 picks to be tried", () -> shown("waste").equals("20 picks"));
        assertThat(amount("waste")).isEqualTo("12 picks");
        dragTo(new Point(edge.x, (int) Math.round(edge.y - 10 * scale)));
        hands.release();

        assertThat(amount("waste")).isEqualTo("22 picks");
        assertThat(hands.steps()).isEqualTo(1);
    }

    @Test
    void longerWordsOnTheLabelsDoNotPushThePictureAsideWhileAnEdgeIsPulled() {
        onEventThread(() -> {
            canvas.setZoom(Zoom.of(2));
            return null;
        });
        select("waste");
        Point edge = on("waste", true);
        press(edge);
        dragTo(new Point(edge.x, edge.y - 8));
        Set<Integer> widths = new TreeSet<>();
        for (int up = 10; up <= 190; up += 60) {
            dragTo(new Point(edge.x, edge.y - up));
            widths.add(onEventThread(() ->
                    SwingUtilities.getAncestorOfClass(JViewport.class, canvas).getX()));
        }
        assertThat(shown("waste")).as("pulled far enough for longer words").matches("\\d{3,} picks");
        assertThat(widths).as("where the picture begins").hasSize(1);
        hands.release();
    }

    @Test
    void escapeGivesAPullUp() {
        select("waste");
        Point edge = on("waste", true);

        press(edge);
        dragTo(new Point(edge.x, edge.y - 30));
        waitFor("another number to be tried", () -> !shown("waste").equals("12 picks"));
        frame.robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        frame.robot().waitForIdle();
        assertThat(shown("waste")).isEqualTo("12 picks");
        hands.release();

        assertThat(amount("waste")).isEqualTo("12 picks");
        assertThat(hands.steps()).isZero();
    }

    @Test
    void aBlockIsDraggedToAnotherPlace() {
        press(on("waste", false));
        dragTo(new Point(on("facing", false).x, on("facing", false).y - 2));
        hands.release();

        assertThat(ids()).containsExactly("ordering", "twining", "stiff", "facing", "waste", "soumak", "fold");
        assertThat(hands.steps()).isEqualTo(1);
        assertThat(onEventThread(session::selection)).isEqualTo(Selection.of(Place.START, "waste"));
    }

    @Test
    void severalBlocksAreSelectedWithShiftAndDeletedTogether() {
        frame.robot().click(canvas, on("stiff", false));
        frame.robot().pressKey(KeyEvent.VK_SHIFT);
        frame.robot().click(canvas, on("waste", false));
        frame.robot().releaseKey(KeyEvent.VK_SHIFT);
        frame.robot().waitForIdle();
        assertThat(onEventThread(() -> session.selection().ids())).containsExactly("stiff", "twining", "waste");

        frame.robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        frame.robot().waitForIdle();

        assertThat(ids()).containsExactly("ordering", "facing", "soumak", "fold");
    }

    @Test
    void copiedBlocksArePastedAboveTheSelectedOne() {
        select("twining");
        hands.ctrl(KeyEvent.VK_C);
        select("facing");
        hands.ctrl(KeyEvent.VK_V);

        assertThat(ids())
                .containsExactly("ordering", "waste", "twining", "stiff", "facing", "twining-2", "soumak", "fold");
        hands.ctrl(KeyEvent.VK_D);
        assertThat(ids()).contains("twining-3");
    }

    @Test
    void anAmountIsTypedOnItsLabel() {
        select("facing");
        frame.robot().pressAndReleaseKey(KeyEvent.VK_F2);
        var entry = frame.textBox("amountEntry");
        hands.waitForFocus("amountEntry");
        entry.requireText("6 picks");

        entry.selectAll().enterText("lots");
        frame.robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        frame.robot().waitForIdle();
        entry.requireText("lots").requireVisible();
        frame.textBox("amountEntry.reason").requireVisible();

        entry.selectAll().enterText("1/2 in");
        frame.robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        frame.robot().waitForIdle();
        assertThat(amount("facing")).isEqualTo("1/2 in");
        assertThat(onEventThread(() -> entry.target().isVisible())).isFalse();
    }

    @Test
    @RealScreenOnly
    void theWheelWithControlComesCloserAtThePointer() {
        double before = onEventThread(canvas::scale);
        Point point = on("facing", false);
        double there = onEventThread(() -> canvas.map().view().clothY(point.y));

        frame.robot().moveMouse(hands.screen(canvas, point));
        frame.robot().pressKey(KeyEvent.VK_CONTROL);
        frame.robot().rotateMouseWheel(-8);
        frame.robot().releaseKey(KeyEvent.VK_CONTROL);
        frame.robot().waitForIdle();

        assertThat(onEventThread(canvas::scale)).isGreaterThan(before * 2);
        Point now = onEventThread(() -> {
            Point corner = canvas.getLocationOnScreen();
            Point mouse = java.awt.MouseInfo.getPointerInfo().getLocation();
            return new Point(mouse.x - corner.x, mouse.y - corner.y);
        });
        assertThat(onEventThread(() -> canvas.map().view().clothY(now.y))).isCloseTo(there, within(1.0));
    }

    private static org.assertj.core.data.Offset<Double> within(double mm) {
        return org.assertj.core.data.Offset.offset(mm);
    }

    @Test
    void theOtherMouseButtonOffersWhatCanBeDone() {
        frame.robot().click(canvas, on("facing", false), MouseButton.RIGHT_BUTTON, 1);
        frame.robot().waitForIdle();

        assertThat(onEventThread(session::selection)).isEqualTo(Selection.of(Place.START, "facing"));
        var item = frame.robot()
                .finder()
                .find(component -> component instanceof javax.swing.JMenuItem menu
                        && "menu.duplicate".equals(menu.getName())
                        && menu.isShowing());
        frame.robot().click(item);
        frame.robot().waitForIdle();
        assertThat(ids()).contains("facing-2");
    }
}
