package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.shelf.BlockShelf;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.testing.RealScreenOnly;
import thrumwright.testing.WindowTest;

/** How the window's height and width are divided, on a small screen too, and that it stays so. */
class PartsIT {
    /** The picture is of use from this height on, pixels; in a very low window there is less. */
    private static final int OF_USE = 90;

    private static final int LEAST = 50;

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private final Workroom[] room = new Workroom[1];
    private EditorWindow editor;
    private FrameFixture frame;

    private void open(int width, int height) {
        frame = window.show(() -> {
            if (room[0] == null) {
                room[0] = Rooms.forgetful();
            }
            editor = room[0].open(Optional.empty());
            // A robot packs what it shows.
            editor.frame().setPreferredSize(new Dimension(width, height));
            return editor.frame();
        });
        window.robot().waitForIdle();
    }

    private int height(String name, Class<? extends JComponent> kind) {
        JComponent part = find(name, kind);
        return onEventThread(() -> part.getVisibleRect().height);
    }

    private <T extends JComponent> T find(String name, Class<T> kind) {
        return window.robot().finder().findByName(frame.target(), name, kind, false);
    }

    private int views() {
        return height("views", JTabbedPane.class);
    }

    private int canvas() {
        return height("canvas", PieceCanvas.class);
    }

    private void run(String id) {
        onEventThread(() -> {
            frame.menuItem("menu." + id).target().doClick(0);
            return null;
        });
        window.robot().waitForIdle();
    }

    /** On a small laptop the board has half of the window, and each form shows eight fields or all that it has. */
    @Test
    void atFirstTheViewsAreALineAndTheBoardHasTheRoom() {
        open(1366, 768);
        // the robot gives the window its size only after it was made for a larger screen
        onEventThread(() -> {
            find("shelf", BlockShelf.class).fold(true);
            return null;
        });
        window.robot().waitForIdle();
        assertThat(views()).isLessThan(44);
        JComponent board = find("board", JComponent.class);
        long share = onEventThread(() -> 100L * board.getWidth() * board.getHeight() / (1366 * 768));
        assertThat(share).as("the board's share of the window, percent").isGreaterThanOrEqualTo(50);
        JTabbedPane forms = find("forms", JTabbedPane.class);
        for (int i = 0; i < onEventThread(forms::getTabCount); i++) {
            int tab = i;
            onEventThread(() -> {
                forms.setSelectedIndex(tab);
                return null;
            });
            window.robot().waitForIdle();
            assertThat(onEventThread(() -> fieldsSeen((JComponent) forms.getSelectedComponent())))
                    .as("fields to be seen on tab %d", tab)
                    .isGreaterThanOrEqualTo(8);
        }
        run("views-open");
        assertThat(views()).isBetween(180, 280);
        assertThat(canvas()).isGreaterThan(views());
    }

    private static long fieldsSeen(JComponent form) {
        return Stage.all(
                        form,
                        JComponent.class,
                        field -> String.valueOf(field.getName()).startsWith("field.")
                                && !String.valueOf(field.getName()).endsWith(".reason"))
                .stream()
                .filter(field -> field.getVisibleRect().height >= field.getHeight() - 2)
                .count();
    }

    @Test
    void aWindowThatWasSmallForATimeIsAsBeforeAgain() {
        open(1366, 768);
        run("views-open");
        run("divider-up");
        run("divider-left");
        int usual = views();
        int fields = width("formsAndShelf");
        for (Dimension size : List.of(new Dimension(700, 400), new Dimension(900, 500), new Dimension(1366, 768))) {
            onEventThread(() -> {
                editor.frame().setSize(size);
                editor.frame().validate();
                return null;
            });
            window.robot().waitForIdle();
            assertThat(canvas()).as("canvas in %s", size).isGreaterThanOrEqualTo(40);
        }
        assertThat(views()).isEqualTo(usual);
        assertThat(width("formsAndShelf")).isEqualTo(fields);
    }

    @Test
    void whatWasFoldedAwayIsSoInTheNextWindow() {
        open(1366, 768);
        run("fields-shown");
        int folded = views();
        onEventThread(() -> {
            editor.dispose();
            return null;
        });
        open(1366, 768);
        assertThat(views()).isEqualTo(folded);
        assertThat(onEventThread(() -> find("formsAndShelf", JComponent.class).isVisible()))
                .isFalse();
        run("fields-shown");
        run("views-open");
        int unfolded = views();
        onEventThread(() -> {
            editor.problem("The file could not be saved.");
            editor.dispose();
            return null;
        });
        open(1366, 768);
        assertThat(views()).isEqualTo(unfolded);
        window.press(KeyEvent.VK_F9);
        onEventThread(() -> {
            editor.problem("The file could not be saved.");
            return null;
        });
        window.press(KeyEvent.VK_F9);
        assertThat(views()).isEqualTo(unfolded);
    }

    private int width(String name) {
        return onEventThread(() -> find(name, JComponent.class).getWidth());
    }

    @Test
    void aKeyMakesTheViewsLargeAndBack() {
        open(1366, 768);
        for (Dimension size : List.of(new Dimension(1366, 768), new Dimension(1024, 600), new Dimension(683, 384))) {
            onEventThread(() -> {
                editor.frame().setSize(size);
                editor.frame().validate();
                return null;
            });
            int usual = views();
            window.press(KeyEvent.VK_F9);
            assertThat(views()).as("views in %s", size).isGreaterThan(usual);
            assertThat(canvas()).as("canvas in %s", size).isGreaterThanOrEqualTo(size.height < 500 ? LEAST : OF_USE);
            assertThat(isOn()).isTrue();
            window.press(KeyEvent.VK_F9);
            assertThat(views()).as("views in %s", size).isEqualTo(usual);
            assertThat(isOn()).isFalse();
        }
    }

    private boolean isOn() {
        return onEventThread(() -> frame.menuItem("menu.views-large").target().isSelected());
    }

    @Test
    void aDoubleClickOnAViewsNameMakesItLarge() {
        open(1366, 768);
        run("views-open");
        JTabbedPane tabs = find("views", JTabbedPane.class);
        Point name = onEventThread(() -> new Point((int) tabs.getBoundsAt(1).getCenterX(), (int)
                tabs.getBoundsAt(1).getCenterY()));
        int usual = views();
        window.robot().click(tabs, name, org.assertj.swing.core.MouseButton.LEFT_BUTTON, 2);
        window.robot().waitForIdle();
        assertThat(views()).isGreaterThan(2 * usual);
        assertThat(onEventThread(tabs::getSelectedIndex)).isEqualTo(1);
    }

    @Test
    void dividersAreMovedFromTheMenuAndNeverCoverThePicture() {
        open(1366, 768);
        run("views-open");
        int usual = views();
        run("divider-up");
        assertThat(views()).isEqualTo(usual + 24);
        run("divider-down");
        run("divider-down");
        assertThat(views()).isEqualTo(usual - 24);
        int fields = onEventThread(() -> find("formsAndShelf", JComponent.class).getWidth());
        run("divider-left");
        assertThat(onEventThread(() -> find("formsAndShelf", JComponent.class).getWidth()))
                .isEqualTo(fields + 24);
        for (int i = 0; i < 40; i++) {
            run("divider-up");
            run("divider-left");
        }
        assertThat(canvas()).isGreaterThanOrEqualTo(OF_USE);
        for (int i = 0; i < 60; i++) {
            run("divider-down");
            run("divider-right");
        }
        assertThat(views()).isBetween(60, 120);
        assertThat(onEventThread(() -> find("formsAndShelf", JComponent.class).getWidth()))
                .isBetween(250, 330);
    }

    @Test
    @RealScreenOnly
    void dividersAreMovedByKeys() {
        open(1366, 768);
        run("views-open");
        int usual = views();
        window.press(KeyEvent.VK_UP, KeyEvent.VK_ALT, KeyEvent.VK_SHIFT);
        assertThat(views()).isEqualTo(usual + 24);
        window.press(KeyEvent.VK_DOWN, KeyEvent.VK_ALT, KeyEvent.VK_SHIFT);
        assertThat(views()).isEqualTo(usual);
    }

    @Test
    void aDividerIsDraggedAndStaysThereInTheNextWindow() {
        open(1366, 768);
        run("views-open");
        JSplitPane split = find("canvasAndViews", JSplitPane.class);
        int usual = views();
        Point grip = onEventThread(() -> new Point(split.getWidth() / 2, split.getDividerLocation() + 3));
        window.robot().moveMouse(split, grip);
        window.robot().pressMouse(org.assertj.swing.core.MouseButton.LEFT_BUTTON);
        window.robot().moveMouse(split, grip.x, grip.y - 30);
        window.robot().moveMouse(split, grip.x, grip.y - 90);
        window.robot().waitForIdle();
        window.robot().releaseMouse(org.assertj.swing.core.MouseButton.LEFT_BUTTON);
        window.robot().waitForIdle();
        int dragged = views();
        assertThat(dragged).isCloseTo(usual + 90, within(6));

        window.press(KeyEvent.VK_F9);
        onEventThread(() -> {
            editor.dispose();
            return null;
        });
        open(1366, 768);
        assertThat(views()).isEqualTo(dragged);
    }
}
