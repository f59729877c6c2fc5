package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.Frame;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import javax.swing.SwingUtilities;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.help.HelpPane;
import thrumwright.editor.look.Theme;
import thrumwright.testing.WindowTest;

/** F1 opens the page that tells of the window at hand, whichever that is. */
class HelpIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private Stage stage;

    @BeforeEach
    void open() {
        stage = Stage.open(window, Locale.UK, Stage.demo("first-wave"));
    }

    private String helped() {
        window.press(KeyEvent.VK_F1);
        FrameFixture help = window.frame("helpWindow");
        String topic = stage.ask(() -> {
            HelpPane pane = stage.robot().finder().findByName(help.target(), "helpPage", HelpPane.class);
            return pane.topic().page().file() + "#" + pane.topic().anchor();
        });
        window.press(KeyEvent.VK_ESCAPE);
        help.requireNotVisible();
        return topic;
    }

    private void chosen(String id) {
        JMenuItem item =
                stage.robot().finder().findByName(stage.frame().target(), "menu." + id, JMenuItem.class, false);
        SwingUtilities.invokeLater(() -> item.doClick(0));
    }

    private void to(FrameFixture frame) {
        onEventThread(() -> {
            frame.target().toFront();
            frame.target().requestFocus();
            return null;
        });
        stage.robot().waitForIdle();
    }

    @Test
    void everyWindowBesideThePieceHasItsPage() {
        for (List<String> each : List.of(
                List.of("sheet", "sheet", "editor.md#the-sheet"),
                List.of("class", "class", "editor.md#a-class"),
                List.of("loom", "loomWindow", "editor.md#at-the-loom"),
                List.of("keys", "keysWindow", "editor.md#keys"))) {
            chosen(each.get(0));
            FrameFixture frame = window.frame(each.get(1));
            to(frame);
            assertThat(helped()).isEqualTo(each.get(2));
            stage.run(() -> frame.target().setVisible(false));
        }
    }

    @Test
    void aDialogWaitsWhileTheDocsAreRead() {
        chosen("settings");
        DialogFixture settings = window.dialog("settings");
        assertThat(helped()).isEqualTo("editor.md#settings");
        settings.requireVisible();
        settings.radioButton("theme." + Theme.DARK).click();
        assertThat(stage.ask(() -> stage.editor().room().theme())).isEqualTo(Theme.DARK);
        settings.radioButton("theme.SYSTEM").requireNotSelected();
        settings.button("settings.close").click();
        settings.requireNotVisible();
        JFrame frame = stage.editor().frame();
        stage.run(frame::dispose);
        assertThat(stage.ask(() -> Stream.of(Frame.getFrames())
                        .anyMatch(each -> each.isDisplayable() && "helpWindow".equals(each.getName()))))
                .as("the docs stay when the last window has gone")
                .isFalse();
    }
}
