package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.swing.JTable;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.look.Theme;
import thrumwright.editor.text.CommandText;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.KeyLine;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.KeyList;
import thrumwright.editor.window.KeysWindow;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.testing.LongTexts;
import thrumwright.testing.WindowTest;

/** The list of keys: all commands, as the bundle has them, found by typing. */
class KeysIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private EditorWindow editor;
    private FrameFixture keys;

    private void open() {
        window.show(() -> {
            editor = Rooms.forgetful().open(Optional.empty());
            return editor.frame();
        });
        new Hands(window, editor).ctrl(KeyEvent.VK_K);
        keys = window.frame("keysWindow");
    }

    private List<List<String>> rows() {
        JTable table = keys.table("keys").target();
        return onEventThread(() -> {
            List<List<String>> rows = new ArrayList<>();
            for (int row = 0; row < table.getRowCount(); row++) {
                List<String> cells = new ArrayList<>();
                for (int column = 0; column < table.getColumnCount(); column++) {
                    cells.add(String.valueOf(table.getValueAt(row, column)));
                }
                rows.add(cells);
            }
            return rows;
        });
    }

    @Test
    void everyCommandOfTheBundleIsThereOnceWithItsKeys() {
        open();
        List<CommandText> declared = new CommandTexts(Locale.UK, Commands.menuKey()).all();
        List<List<String>> rows = rows();
        assertThat(rows).hasSameSizeAs(declared);
        for (CommandText command : declared) {
            String shown = new KeyLine("", command).keys();
            assertThat(shown.isEmpty())
                    .as(command.id())
                    .isEqualTo(command.keys().isEmpty());
            assertThat(rows)
                    .as(command.id())
                    .filteredOn(row -> row.get(1).equals(command.text())
                            && row.get(2).equals(shown)
                            && row.get(3).equals(command.tip()))
                    .isNotEmpty()
                    .allSatisfy(row -> assertThat(row.get(0)).isNotBlank());
        }
        assertThat(rows).contains(List.of("Edit", "Undo", "Ctrl+Z", "Take the last change back"));
        assertThat(rows).filteredOn(row -> row.get(1).equals("Closer")).hasSize(2);
    }

    @Test
    void wordsAndKeysFindCommandsAndEscapeClosesTheList() {
        open();
        int all = rows().size();
        keys.textBox("keys.search").requireFocused().enterText("hem");
        assertThat(rows())
                .isNotEmpty()
                .hasSizeLessThan(all / 4)
                .allSatisfy(row -> assertThat(String.join(" ", row).toLowerCase(Locale.ROOT))
                        .containsPattern("\\bhem"));
        keys.textBox("keys.search").setText("ctrl shift b");
        assertThat(rows()).extracting(row -> row.get(1)).contains("Block shelf");
        keys.label("keys.count").requireText(rows().size() + (rows().size() == 1 ? " command" : " commands"));
        keys.textBox("keys.search").setText("no such words");
        assertThat(rows()).isEmpty();
        keys.textBox("keys.search").setText("fringe");
        keys.textBox("keys.search").focus();
        window.press(KeyEvent.VK_DOWN);
        keys.table("keys").requireFocused();
        assertThat(onEventThread(() -> keys.table("keys").target().getSelectedRow()))
                .isZero();
        window.press(KeyEvent.VK_ESCAPE);
        assertThat(onEventThread(() -> keys.target().isShowing())).isFalse();
    }

    @Test
    void itHasAccessibleNames() {
        open();
        assertThat(onEventThread(
                        () -> keys.table("keys").target().getAccessibleContext().getAccessibleName()))
                .isEqualTo("Keys and commands");
        assertThat(onEventThread(() -> keys.textBox("keys.search")
                        .target()
                        .getAccessibleContext()
                        .getAccessibleName()))
                .isEqualTo("Look for");
    }

    @Test
    void thereIsRoomForItInEveryThemeAndWithLongTexts() {
        LongTexts.write();
        Set<String> found = new LinkedHashSet<>();
        for (Locale locale : List.of(Locale.UK, LongTexts.LOCALE)) {
            Stage stage = Stage.open(window, locale, Stage.demo("saltmarsh-panel"));
            for (Theme theme : Theme.values()) {
                stage.theme(theme);
                stage.run(() -> stage.editor().frame().getJMenuBar());
                stage.run(() -> {
                    KeysWindow list = new KeysWindow(
                            stage.editor().room(),
                            KeyList.of(
                                    new CommandTexts(locale, "ctrl"),
                                    stage.editor().frame().getJMenuBar(),
                                    Texts.of(locale)),
                            1);
                    list.frame().setSize(683, 384);
                    list.show();
                    list.frame().validate();
                    Unclipped.in(list.frame().getRootPane()).forEach(what -> found.add(theme + ": " + what));
                    list.dispose();
                });
            }
            stage.run(() -> stage.editor().frame().dispose());
        }
        assertThat(found).as(String.join("\n", found)).isEmpty();
    }
}
