package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.util.Set;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.form.FormTabs;
import thrumwright.editor.look.Theme;
import thrumwright.editor.shelf.BlockShelf;
import thrumwright.editor.view.HistoryView;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.testing.WindowTest;

/** What is loaded before the first event: the window's classes, and no component is made of them. */
class ClassesAheadIT {
    @Test
    void theWindowIsMadeOfThem() {
        WindowTest.onEventThread(() -> {
            Theme.LIGHT.apply(Fonts.load());
            return null;
        });
        int before = Window.getWindows().length;

        Set<Class<?>> loaded = ClassesAhead.from(EditorWindow.class);

        assertThat(loaded)
                .hasSizeBetween(300, 3000)
                .contains(
                        PieceCanvas.class,
                        LabelColumn.class,
                        FormTabs.class,
                        BlockShelf.class,
                        HistoryView.class,
                        JTabbedPane.class,
                        JTextField.class,
                        com.formdev.flatlaf.ui.FlatTabbedPaneUI.class,
                        com.formdev.flatlaf.ui.FlatButtonUI.class);
        assertThat(Window.getWindows()).hasSize(before);
    }

    @Test
    void theThreadEndsByItself() throws InterruptedException {
        Thread thread = ClassesAhead.begin();
        ClassesAhead.await(thread);
        assertThat(thread.isAlive()).isFalse();
        assertThat(thread.isDaemon()).isTrue();
    }
}
