package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import thrumwright.block.Block;
import thrumwright.block.OrderingCord;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.edit.Session;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/** A weaver's hands at one window: one on the mouse, one on the keys. Every move waits until the window has answered. */
final class Hands {
    private final WindowTest window;
    private final Robot robot;
    private final EditorWindow editor;

    Hands(WindowTest window, EditorWindow editor) {
        this.window = window;
        this.robot = window.robot();
        this.editor = editor;
        settle();
        focusCanvas();
    }

    /** As when the program itself opens a window. */
    void focusCanvas() {
        onEventThread(() -> canvas().requestFocusInWindow());
        waitForFocus("canvas");
    }

    Session session() {
        return editor.session();
    }

    <T extends Component> T find(String name, Class<T> type) {
        return robot.finder().findByName(editor.frame(), name, type, false);
    }

    PieceCanvas canvas() {
        return find("canvas", PieceCanvas.class);
    }

    LabelColumn labels() {
        return find("labels", LabelColumn.class);
    }

    /** A press meanwhile would miss what it is meant for. */
    void settle() {
        Object[] before = new Object[1];
        int[] alike = new int[1];
        waitFor("the canvas to lie still", () -> {
            robot.waitForIdle();
            Object now = onEventThread(() -> List.of(
                    canvas().isShowing(),
                    canvas().getBounds(),
                    canvas().getLocationOnScreen(),
                    canvas().map().view()));
            alike[0] = now.equals(before[0]) ? alike[0] + 1 : 0;
            before[0] = now;
            return alike[0] >= 2;
        });
    }

    List<String> ids(Place place) {
        return onEventThread(() ->
                session().piece().end(place).blocks().stream().map(Block::id).toList());
    }

    List<String> shownIds(Place place) {
        return onEventThread(() ->
                session().shown().end(place).blocks().stream().map(Block::id).toList());
    }

    int steps() {
        return onEventThread(() -> session().history().names().size());
    }

    int done() {
        return onEventThread(() -> session().history().done());
    }

    /** On a block's upper line or in its middle, a little right of the first warp ends. */
    Point on(Place place, String id, boolean edge) {
        return onEventThread(() -> {
            var spot = canvas().map().spot(place, id).orElseThrow();
            double y = edge ? spot.top() : spot.middle();
            return new Point((int) canvas().getVisibleRect().getCenterX(), (int) Math.round(y));
        });
    }

    /** In the middle of a kind on the shelf. */
    Point ware(String name) {
        return onEventThread(() -> {
            JList<?> wares = find("wares", JList.class);
            for (int i = 0; i < wares.getModel().getSize(); i++) {
                if (name.equals(wares.getModel().getElementAt(i).toString())) {
                    wares.ensureIndexIsVisible(i);
                    var cell = wares.getCellBounds(i, i);
                    return new Point((int) cell.getCenterX(), (int) cell.getCenterY());
                }
            }
            throw new AssertionError("no “" + name + "” on the shelf");
        });
    }

    void press(JComponent component, Point point) {
        robot.moveMouse(screen(component, point));
        robot.waitForIdle();
        robot.pressMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    /** In small steps, as a hand does; the first one is what makes a press a drag. */
    void dragTo(JComponent component, Point point) {
        Point to = screen(component, point);
        robot.moveMouse(new Point(to.x + 9, to.y + 1));
        robot.waitForIdle();
        robot.moveMouse(new Point(to.x + 1, to.y));
        robot.moveMouse(to);
        robot.waitForIdle();
    }

    void release() {
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    void click(JComponent component, Point point) {
        press(component, point);
        release();
    }

    void click(String name) {
        JComponent component = find(name, JComponent.class);
        waitFor(name + " to be possible", () -> onEventThread(component::isEnabled));
        robot.click(component);
        robot.waitForIdle();
    }

    /** Goes through menus by the names of their items. */
    void choose(String... names) {
        for (String name : names) {
            waitFor(name + " to be there", () -> !shown(name).isEmpty());
            robot.click(shown(name).iterator().next());
            robot.waitForIdle();
        }
    }

    private java.util.Collection<Component> shown(String name) {
        return robot.finder().findAll(component -> name.equals(component.getName()) && component.isShowing());
    }

    /** Clicks the tab of a view below the canvas. */
    void tab(String title) {
        JTabbedPane tabs = find("views", JTabbedPane.class);
        click(tabs, onEventThread(() -> {
            var box = tabs.getBoundsAt(tabs.indexOfTab(title));
            return new Point((int) box.getCenterX(), (int) box.getCenterY());
        }));
    }

    void clickRow(String list, int index) {
        JList<?> rows = find(list, JList.class);
        click(rows, onEventThread(() -> {
            rows.ensureIndexIsVisible(index);
            var cell = rows.getCellBounds(index, index);
            return new Point(cell.x + 40, (int) cell.getCenterY());
        }));
    }

    void key(int key, int... held) {
        window.press(key, held);
    }

    void ctrl(int key) {
        key(key, KeyEvent.VK_CONTROL);
    }

    void type(String text) {
        robot.enterText(text);
        robot.waitForIdle();
    }

    void waitForFocus(String name) {
        Component component = find(name, Component.class);
        waitFor("the keyboard at " + name, () -> onEventThread(component::isFocusOwner));
    }

    Point screen(JComponent component, Point point) {
        return onEventThread(() -> {
            Point corner = component.getLocationOnScreen();
            return new Point(corner.x + point.x, corner.y + point.y);
        });
    }

    /** Nothing but what belongs to the window lies on it. */
    boolean nothingCarried() {
        return onEventThread(() -> {
            Container pane = editor.frame().getLayeredPane();
            for (Component component : pane.getComponents()) {
                if ("carried".equals(component.getName())) {
                    return false;
                }
            }
            return true;
        });
    }

    /** Whether the keys have come to an item of a menu. */
    boolean armed(String item) {
        return onEventThread(() -> {
            MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
            return path.length > 0
                    && item.equals(path[path.length - 1].getComponent().getName());
        });
    }

    void requireMirrored() {
        assertThat(onEventThread(() -> session().piece().topFollows())).isTrue();
        List<String> repeated = new ArrayList<>(onEventThread(() -> session().piece().start().blocks().stream()
                .filter(block -> !(block instanceof OrderingCord))
                .map(Block::id)
                .toList()));
        Collections.reverse(repeated);
        assertThat(ids(Place.TOP)).isEqualTo(repeated);
    }
}
