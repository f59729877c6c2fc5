package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JViewport;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.testing.PureJavaScreen;
import thrumwright.testing.RealScreenOnly;
import thrumwright.testing.SeeingGraphics;
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
        assertThat(besideThePointer(new Point(edge.x, (int) Math.round(edge.y - 8 * scale))))
                .contains("20 picks, 2 cm");
        dragTo(new Point(edge.x, (int) Math.round(edge.y - 10 * scale)));
        hands.release();

        assertThat(amount("waste")).isEqualTo("22 picks");
        assertThat(hands.steps()).isEqualTo(1);
    }

    /** What is written on the canvas near a point. */
    private List<String> besideThePointer(Point pointer) {
        return onEventThread(() ->
                SeeingGraphics.of(canvas.getWidth(), canvas.getHeight(), java.awt.Color.WHITE, canvas::paint).stream()
                        .filter(seen -> !seen.text().isEmpty()
                                && Math.abs(seen.box().getX() - pointer.x) < 60
                                && Math.abs(seen.box().getY() - pointer.y) < 60)
                        .map(SeeingGraphics.Seen::text)
                        .toList());
    }

    /** Both while the edge is pulled and when it is let go, whether or not all of the piece is in the window. */
    @Test
    void theLowerEdgeStaysWhereItIsWhileTheUpperOneIsPulled() {
        for (Zoom zoom : List.of(Zoom.fitting(Zoom.Fit.LOOM), Zoom.of(6), Zoom.fitting(Zoom.Fit.SELVEDGES))) {
            onEventThread(() -> {
                canvas.setZoom(zoom);
                canvas.reveal(Place.START, "waste");
                return null;
            });
            select("waste");
            Point edge = new Point((int) onEventThread(canvas::getVisibleRect).getCenterX(), on("waste", true).y);
            double before = lowerEdge("waste");
            press(edge);
            dragTo(new Point(edge.x, edge.y - 16));
            assertThat(lowerEdge("waste")).as("pulled, " + zoom).isCloseTo(before, within(1.0));
            hands.release();
            assertThat(lowerEdge("waste")).as("let go, " + zoom).isCloseTo(before, within(1.5));
        }
        assertThat(hands.steps()).isEqualTo(3);
    }

    private double lowerEdge(String id) {
        return onEventThread(
                () -> canvas.map().spot(Place.START, id).orElseThrow().bottom() - canvas.getVisibleRect().y);
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

    /** What was held isn't there any more, or not as it was. */
    @Test
    void aPullIsGivenUpWhenAKeyChangesThePiece() {
        select("waste");
        Point edge = on("waste", true);
        press(edge);
        dragTo(new Point(edge.x, edge.y - 30));
        waitFor("another number to be tried", () -> !shown("waste").equals("12 picks"));

        hands.key(KeyEvent.VK_DELETE);
        assertThat(ids()).doesNotContain("waste");
        dragTo(new Point(edge.x, edge.y - 50));
        hands.release();

        assertThat(ids()).doesNotContain("waste");
        assertThat(hands.shownIds(Place.START)).doesNotContain("waste");
        assertThat(hands.steps()).isEqualTo(1);
    }

    @Test
    void escapeGivesADragUp() {
        List<String> before = ids();
        Point waste = on("waste", false);
        press(waste);
        dragTo(new Point(waste.x, on("facing", false).y - 2));
        waitFor("another place to be tried", () -> !hands.shownIds(Place.START).equals(before));

        hands.key(KeyEvent.VK_ESCAPE);
        assertThat(hands.shownIds(Place.START)).isEqualTo(before);
        dragTo(on("soumak", false));
        hands.release();

        assertThat(ids()).isEqualTo(before);
        assertThat(hands.steps()).isZero();
        assertThat(onEventThread(session::dirty)).isFalse();
    }

    @Test
    void escapeGivesADragOfALabelUp() {
        List<String> before = ids();
        Point waste = onLabel("waste");
        hands.press(hands.labels(), waste);
        hands.dragTo(hands.labels(), new Point(waste.x, onLabel("facing").y - 2));
        waitFor("another place to be tried", () -> !hands.shownIds(Place.START).equals(before));

        hands.key(KeyEvent.VK_ESCAPE);
        hands.release();

        assertThat(ids()).isEqualTo(before);
        assertThat(hands.steps()).isZero();
    }

    /** On a block's line in the list. */
    private Point onLabel(String id) {
        return onEventThread(() -> {
            Rectangle box = hands.labels().amountBox(Place.START, id).orElseThrow();
            return new Point(12, (int) box.getCenterY());
        });
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

    /** Also close to the edge of a selected block, where a drag would pull it. */
    @Test
    void aClickWithControlAddsABlockAndTakesItAwayAgainAndAllAreDraggedTogether() {
        frame.robot().click(canvas, on("twining", false));
        frame.robot().pressKey(KeyEvent.VK_CONTROL);
        for (String id : List.of("facing", "stiff", "waste", "stiff", "waste")) {
            Pause.pause(betweenSingleClicks());
            frame.robot().click(canvas, on(id, false));
        }
        frame.robot().releaseKey(KeyEvent.VK_CONTROL);
        frame.robot().waitForIdle();
        assertThat(onEventThread(() -> session.selection().ids())).containsExactly("twining", "facing");

        press(on("facing", false));
        dragTo(new Point(on("waste", false).x, on("waste", false).y + 2));
        hands.release();

        assertThat(ids()).containsExactly("ordering", "twining", "facing", "waste", "stiff", "soumak", "fold");
        assertThat(hands.steps()).isEqualTo(1);
    }

    /** Two clicks that follow each other sooner are a double click, ms; on the screen in pure Java only those at one spot. */
    private static long betweenSingleClicks() {
        if (PureJavaScreen.isAskedFor()) {
            return 0;
        }
        Object known = Toolkit.getDefaultToolkit().getDesktopProperty("awt.multiClickInterval");
        return (known instanceof Integer interval ? interval : 500) + 100L;
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
    void aWrongAmountIsNotLostWhenThatOfAnotherBlockIsAskedFor() {
        select("facing");
        frame.robot().pressAndReleaseKey(KeyEvent.VK_F2);
        hands.waitForFocus("amountEntry");
        var entry = frame.textBox("amountEntry");
        entry.selectAll().enterText("lots");
        select("waste");
        frame.robot().pressAndReleaseKey(KeyEvent.VK_F2);
        hands.waitForFocus("amountEntry");
        entry.requireText("lots");
        frame.textBox("amountEntry.reason").requireVisible();

        entry.selectAll().enterText("7 picks");
        select("waste");
        frame.robot().pressAndReleaseKey(KeyEvent.VK_F2);
        hands.waitForFocus("amountEntry");
        entry.requireText("12 picks");
        assertThat(amount("facing")).isEqualTo("7 picks");
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

    /** Each as weavers write it; of a block that is counted in rows a height becomes whole rows. */
    @ParameterizedTest
    @CsvSource({
        "facing, 6 picks, 6 picks",
        "facing, 1/2 in, 1/2 in",
        "facing, 12 mm, 12 mm",
        "twining, 3 rows, 3 rows",
        "soumak, 7 mm, 2 rows"
    })
    void anAmountIsTypedInAnyOfItsWays(String id, String typed, String taken) {
        select(id);
        hands.key(KeyEvent.VK_ENTER);
        hands.waitForFocus("amountEntry");
        hands.ctrl(KeyEvent.VK_A);
        hands.type(typed);
        hands.key(KeyEvent.VK_ENTER);
        hands.waitForFocus("canvas");

        assertThat(amount(id)).isEqualTo(taken);
    }

    /** The keys come to the same piece as the mouse does. */
    @Test
    void everyDragHasItsTwinOnTheKeys() {
        select("waste");
        Point edge = on("waste", true);
        press(edge);
        dragTo(new Point(edge.x, edge.y - 40));
        hands.release();
        Piece pulled = takenBack();
        hands.key(KeyEvent.VK_F2);
        hands.waitForFocus("amountEntry");
        hands.ctrl(KeyEvent.VK_A);
        hands.type(Amounts.text(pulled.start().block("waste").orElseThrow()));
        hands.key(KeyEvent.VK_ENTER);
        hands.waitForFocus("canvas");
        assertThat(takenBack()).isEqualTo(pulled);

        press(on("waste", false));
        dragTo(new Point(on("twining", false).x, on("twining", false).y - 2));
        hands.release();
        Piece moved = takenBack();
        select("waste");
        hands.key(KeyEvent.VK_UP, KeyEvent.VK_CONTROL);
        assertThat(takenBack()).isEqualTo(moved);

        javax.swing.JList<?> wares = hands.find("wares", javax.swing.JList.class);
        Point above = on("facing", false);
        hands.press(wares, hands.ware("Twining"));
        dragTo(new Point(above.x, above.y - 1));
        hands.release();
        Piece dropped = takenBack();
        select("facing");
        hands.ctrl(KeyEvent.VK_B);
        hands.waitForFocus("wares");
        hands.type("twin");
        hands.key(KeyEvent.VK_ENTER);
        assertThat(takenBack()).isEqualTo(dropped);
    }

    /** What has just been done, taken back again. */
    private Piece takenBack() {
        Piece after = onEventThread(session::piece);
        hands.ctrl(KeyEvent.VK_Z);
        assertThat(onEventThread(session::dirty)).isFalse();
        assertThat(after).isNotEqualTo(onEventThread(session::piece));
        return after;
    }

    @Test
    @RealScreenOnly
    void theWheelWithControlComesCloserAtThePointer() {
        double before = onEventThread(canvas::scale);
        Point point = on("facing", false);
        double there = onEventThread(() -> canvas.map().heightAt(point.y));

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
        assertThat(onEventThread(() -> canvas.map().heightAt(now.y))).isCloseTo(there, within(1.0));
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

    /** Delete must not take out what nobody pointed at. */
    @Test
    void theOtherMouseButtonOnBareWarpSelectsNothing() {
        select("facing");
        Rectangle seen = onEventThread(() -> canvas.getVisibleRect());
        frame.robot().click(canvas, new Point((int) seen.getCenterX(), seen.y + 12), MouseButton.RIGHT_BUTTON, 1);
        waitFor("the menu", () -> onEventThread(() -> menu() != null));
        assertThat(onEventThread(() -> session.selection().isEmpty())).isTrue();
    }

    /** On the block that is selected, where it would be with the mouse. */
    @Test
    void theKeyForMenusOffersTheSame() {
        select("facing");
        hands.key(KeyEvent.VK_F10, KeyEvent.VK_SHIFT);
        waitFor("the menu", () -> onEventThread(() -> menu() != null));
        Point corner = onEventThread(() -> menu().getLocationOnScreen());
        Point block = hands.screen(canvas, on("facing", false));
        assertThat(corner.y).isCloseTo(block.y, org.assertj.core.data.Offset.offset(30));

        for (int i = 0; i < 20 && !hands.armed("menu.duplicate"); i++) {
            hands.key(KeyEvent.VK_DOWN);
        }
        hands.key(KeyEvent.VK_ENTER);

        assertThat(ids()).contains("facing-2");
    }

    private static java.awt.Component menu() {
        MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
        return path.length > 0 && "blockMenu".equals(path[0].getComponent().getName()) ? path[0].getComponent() : null;
    }
}
