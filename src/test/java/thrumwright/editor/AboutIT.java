package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.desktop.QuitResponse;
import java.awt.event.KeyEvent;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.BuiltIn;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.WindowTest;

/** What the program says of itself, and what a system asks of it. */
class AboutIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private Workroom room;
    private EditorWindow editor;

    private void open() {
        window.show(() -> {
            Settings settings = new Settings(Optional.of(folder.resolve("settings.properties")));
            room = new Workroom(settings, Rooms.LIBRARY, Locale.UK, Keeping.nowhere(), "1.2.3");
            editor = room.open(Optional.empty());
            return editor.frame();
        });
    }

    @Test
    void saysVersionLicenceAndWhereItKeepsWhat() throws Exception {
        open();
        SwingUtilities.invokeLater(() -> new SystemManners(room).about());
        DialogFixture about = window.dialog("about");
        about.button("about.copy").click();
        String copied = onEventThread(
                () -> (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
        assertThat(copied).startsWith("Thrumwright 1.2.3\n").contains(folder.toString(), "Java: ", "System: ");
        about.tabbedPane("about.tabs").selectTab(1);
        String licence = onEventThread(() -> Stage.all(about.target(), JTextArea.class, area -> area.isFocusable())
                .get(0)
                .getText());
        assertThat(licence).contains("Apache License", "Version 2.0, January 2004");
        window.press(KeyEvent.VK_ESCAPE);
        about.requireNotVisible();
    }

    @Test
    void theSettingsAreOpenedAsTheSystemAsks() {
        open();
        SwingUtilities.invokeLater(() -> new SystemManners(room).preferences());
        DialogFixture settings = window.dialog("settings");
        settings.checkBox("settings.moving").requireSelected().click();
        assertThat(room.place().settings().get("loom.moving")).contains("false");
        window.press(KeyEvent.VK_ESCAPE);
        settings.requireNotVisible();
    }

    private static final class Response implements QuitResponse {
        String said = "";

        @Override
        public void performQuit() {
            said += "quit";
        }

        @Override
        public void cancelQuit() {
            said += "stay";
        }
    }

    @Test
    void aFileIsOpenedAndTheProgramIsLeftAsTheSystemAsks() throws Exception {
        open();
        Path file = Files.writeString(folder.resolve("wave.thrum"), BuiltIn.DEMO.text("first-wave.json"));
        Response response = new Response();
        onEventThread(() -> {
            SystemManners manners = new SystemManners(room);
            manners.open(List.of(new File(file.toString())));
            assertThat(editor.session().piece().title()).isEqualTo("First wave");
            manners.quit(response);
            return null;
        });
        assertThat(response.said).isEqualTo("quit");
        assertThat(room.count()).isZero();
    }
}
