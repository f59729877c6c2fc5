package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.WindowTest;

/** A teacher shows every kind of block to a class, on the whole screen. */
class ShowingIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private EditorWindow editor;
    private FrameFixture showing;

    private void open(boolean moving) {
        window.show(() -> {
            Settings settings = new Settings(Optional.empty());
            settings.put("loom.moving", String.valueOf(moving));
            editor = new Workroom(settings, Rooms.LIBRARY, Locale.UK, Keeping.nowhere()).open(Optional.empty());
            return editor.frame();
        });
        window.press(KeyEvent.VK_C, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        FrameFixture looms = window.frame("class");
        onEventThread(() -> {
            ((JFrame) looms.target())
                    .getRootPane()
                    .getActionMap()
                    .get("class-show")
                    .actionPerformed(null);
            return null;
        });
        showing = window.frame("showing");
    }

    private <C extends JComponent> C find(String name, Class<C> kind) {
        return showing.robot().finder().findByName(showing.target(), name, kind);
    }

    @Test
    void everyKindIsShownAndEscapeLeavesIt() {
        open(false);
        assertThat(showing.target().getBounds())
                .isEqualTo(showing.target().getGraphicsConfiguration().getBounds());
        JComboBox<?> kinds = find("showing.kind", JComboBox.class);
        waitFor("the keyboard at the kinds", () -> onEventThread(kinds::isFocusOwner));
        Set<Integer> pictures = new HashSet<>();
        int both = 0;
        for (int i = 0; i < onEventThread(kinds::getItemCount); i++) {
            both += shows(kinds, i, pictures) ? 1 : 0;
        }
        assertThat(both).as("kinds shown right and wrong").isPositive().isLessThan(kinds.getItemCount());
        assertThat(pictures).as("pictures, all of them others").hasSize(kinds.getItemCount());
        window.press(KeyEvent.VK_ESCAPE);
        waitFor("it to be left", () -> onEventThread(() -> !showing.target().isVisible()));
    }

    /** @return whether right and wrong are seen beside each other */
    private boolean shows(JComboBox<?> kinds, int index, Set<Integer> pictures) {
        JComponent view = find("showing.view", JComponent.class);
        return onEventThread(() -> {
            kinds.setSelectedIndex(index);
            String name = view.getAccessibleContext().getAccessibleName();
            assertThat(name).startsWith(String.valueOf(kinds.getSelectedItem()));
            int[] seen = painted(view);
            assertThat(IntStream.of(seen).distinct().limit(5).count()).as(name).isEqualTo(5);
            pictures.add(Arrays.hashCode(seen));
            return name.endsWith("right and wrong beside each other");
        });
    }

    private static int[] painted(JComponent view) {
        BufferedImage image = new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
        view.paint(image.getGraphics());
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    @Test
    void theMoveStandsStillWhileItIsStopped() {
        open(true);
        JComponent view = find("showing.view", JComponent.class);
        JComboBox<?> kinds = find("showing.kind", JComboBox.class);
        onEventThread(() -> {
            int at = IntStream.range(0, kinds.getItemCount())
                    .filter(i -> kinds.getItemAt(i).toString().equals("Twining"))
                    .findFirst()
                    .orElseThrow();
            kinds.setSelectedIndex(at);
            return null;
        });
        int[] before = onEventThread(() -> painted(view));
        waitFor("the yarn to move", () -> !Arrays.equals(before, onEventThread(() -> painted(view))));
        showing.toggleButton("loom-move").click();
        int[] stopped = onEventThread(() -> painted(view));
        window.robot().waitForIdle();
        assertThat(onEventThread(() -> painted(view))).isEqualTo(stopped);
    }
}
