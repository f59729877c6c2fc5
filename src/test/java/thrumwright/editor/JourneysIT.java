package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.block.Block;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.files.Dialogs;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.testing.WindowTest;

/** From a new piece to its sheet: once without the keyboard, once without the mouse. */
class JourneysIT {
    private static final int CHOSEN = 1;

    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private Workroom room;
    private EditorWindow editor;
    private Hands hands;

    @BeforeEach
    void open() {
        window.show(() -> {
            room = Rooms.forgetful();
            editor = room.open(Optional.empty());
            editor.files().setQuestions(new Dialogs(editor.frame(), room.place(), folder));
            return editor.frame();
        });
        hands = new Hands(window, editor);
    }

    private static List<String> idsOf(Structure structure) {
        return structure.end().blocks().stream().map(Block::id).toList();
    }

    private void requireBegun() {
        Structure structure = room.place().library().all().get(CHOSEN);
        waitFor("the new piece", () -> hands.ids(Place.START).equals(idsOf(structure)));
        assertThat(hands.steps()).isZero();
        hands.settle();
    }

    private Path requireSheet() throws Exception {
        waitFor("the sheet", () -> {
            try (var files = Files.list(folder)) {
                return files.anyMatch(file -> file.toString().endsWith(".pdf"));
            } catch (java.io.IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        try (var files = Files.list(folder)) {
            Path sheet = files.filter(file -> file.toString().endsWith(".pdf"))
                    .findFirst()
                    .orElseThrow();
            waitFor("the whole sheet", () -> endsWhole(sheet));
            return sheet;
        }
    }

    private static boolean endsWhole(Path pdf) {
        try {
            return new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1)
                    .stripTrailing()
                    .endsWith("%%EOF");
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void withTheMouseOnly() throws Exception {
        hands.click("tool.new");
        DialogFixture begin = window.dialog("begin");
        begin.list("structures").item(CHOSEN).click();
        begin.button("beginWithIt").click();
        requireBegun();
        List<String> first = hands.ids(Place.START);
        String lowest = first.get(1);

        Point there = hands.on(Place.START, lowest, false);
        hands.press(hands.find("wares", javax.swing.JList.class), hands.ware("Half hitches"));
        hands.dragTo(hands.canvas(), new Point(there.x, there.y - 1));
        hands.release();
        hands.settle();
        hands.click(hands.canvas(), hands.on(Place.START, lowest, false));
        Point edge = hands.on(Place.START, lowest, true);
        hands.press(hands.canvas(), edge);
        hands.dragTo(hands.canvas(), new Point(edge.x, edge.y - 25));
        hands.release();
        hands.settle();
        hands.click("tool.up");
        assertThat(hands.steps()).isEqualTo(3);
        List<String> last = hands.ids(Place.START);
        assertThat(last).contains("hitches").isNotEqualTo(first);

        for (int i = 0; i < 3; i++) {
            hands.click("tool.undo");
        }
        assertThat(hands.ids(Place.START)).isEqualTo(first);
        assertThat(onEventThread(() -> editor.session().dirty())).isFalse();
        hands.tab("History");
        hands.clickRow("history", 3);
        assertThat(hands.ids(Place.START)).isEqualTo(last);

        hands.choose("menu.block", "menu.top-own");
        assertThat(onEventThread(() -> editor.session().piece().topFollows())).isFalse();
        hands.choose("menu.block", "menu.top-follows");
        hands.requireMirrored();

        hands.choose("menu.file", "menu.export");
        window.files().approve();
        assertThat(requireSheet()).isNotEmptyFile();
    }

    @Test
    void withTheKeyboardOnly() throws Exception {
        hands.ctrl(KeyEvent.VK_N);
        DialogFixture begin = window.dialog("begin");
        waitFor(
                "the keyboard in the dialog",
                () -> onEventThread(() -> begin.target().getMostRecentFocusOwner() != null
                        && begin.target().isFocused()));
        hands.key(KeyEvent.VK_DOWN);
        hands.key(KeyEvent.VK_ENTER);
        requireBegun();
        List<String> first = hands.ids(Place.START);
        hands.waitForFocus("canvas");

        hands.key(KeyEvent.VK_END);
        String lowest = first.get(0);
        assertThat(onEventThread(() -> editor.session().selection().ids())).containsExactly(lowest);
        hands.key(KeyEvent.VK_UP);
        hands.key(KeyEvent.VK_F2);
        hands.waitForFocus("amountEntry");
        hands.ctrl(KeyEvent.VK_A);
        hands.type("9");
        hands.key(KeyEvent.VK_ENTER);
        hands.waitForFocus("canvas");
        assertThat(onEventThread(() ->
                        Amounts.text(editor.session().piece().start().blocks().get(1))))
                .isEqualTo("9 picks");
        hands.ctrl(KeyEvent.VK_B);
        hands.waitForFocus("wares");
        hands.type("half");
        hands.key(KeyEvent.VK_ENTER);
        hands.key(KeyEvent.VK_ESCAPE);
        hands.waitForFocus("canvas");
        hands.key(KeyEvent.VK_UP, KeyEvent.VK_CONTROL);
        assertThat(hands.steps()).isEqualTo(3);
        List<String> last = hands.ids(Place.START);
        assertThat(last).contains("hitches").isNotEqualTo(first);

        for (int i = 0; i < 3; i++) {
            hands.ctrl(KeyEvent.VK_Z);
        }
        assertThat(hands.ids(Place.START)).isEqualTo(first);
        assertThat(onEventThread(() -> editor.session().dirty())).isFalse();
        for (int i = 0; i < 3; i++) {
            hands.ctrl(KeyEvent.VK_Y);
        }
        assertThat(hands.ids(Place.START)).isEqualTo(last);

        chooseWithKeys("menu.top-own");
        assertThat(onEventThread(() -> editor.session().piece().topFollows())).isFalse();
        chooseWithKeys("menu.top-follows");
        hands.requireMirrored();

        hands.ctrl(KeyEvent.VK_E);
        window.files();
        hands.key(KeyEvent.VK_ENTER);
        assertThat(requireSheet()).isNotEmptyFile();
    }

    /** To an item of the menu of blocks: F10 opens the menus, the arrows go on. */
    private void chooseWithKeys(String item) {
        hands.key(KeyEvent.VK_F10);
        hands.key(KeyEvent.VK_RIGHT);
        hands.key(KeyEvent.VK_RIGHT);
        for (int i = 0; i < 30 && !hands.armed(item); i++) {
            hands.key(KeyEvent.VK_DOWN);
        }
        assertThat(hands.armed(item)).isTrue();
        hands.key(KeyEvent.VK_ENTER);
    }
}
