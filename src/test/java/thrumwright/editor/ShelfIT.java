package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.shelf.BlockShelf;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Place;
import thrumwright.store.StructureFile;
import thrumwright.testing.WindowTest;

/** Takes blocks from the shelf, goes through the history, and copies from one window to another. */
class ShelfIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private Workroom room;
    private EditorWindow editor;
    private Hands hands;
    private JList<?> wares;

    @BeforeEach
    void open() {
        Settings settings = new Settings(Optional.of(folder.resolve("settings.properties")));
        room = onEventThread(() -> Rooms.with(settings));
        hands = another();
        wares = hands.find("wares", JList.class);
    }

    private Hands another() {
        window.show(() -> {
            editor = room.open(Optional.empty());
            return editor.frame();
        });
        return new Hands(window, editor);
    }

    private void select(Place place, String id) {
        onEventThread(() -> {
            editor.session().select(Selection.of(place, id));
            return null;
        });
    }

    @Test
    void aBlockIsShownWhereItWouldGoAndLettingItGoIsOneStep() {
        Point above = hands.on(Place.START, "facing", false);

        hands.press(wares, hands.ware("Twining"));
        hands.dragTo(hands.canvas(), new Point(above.x, above.y - 1));
        waitFor(
                "the new block to be tried out",
                () -> hands.shownIds(Place.START).contains("twining-2"));

        assertThat(hands.ids(Place.START)).doesNotContain("twining-2");
        assertThat(hands.nothingCarried()).isFalse();
        hands.release();

        assertThat(hands.ids(Place.START))
                .containsExactly("ordering", "waste", "twining", "stiff", "facing", "twining-2", "soumak", "fold");
        assertThat(hands.ids(Place.TOP)).contains("twining-2");
        assertThat(hands.steps()).isEqualTo(1);
        assertThat(onEventThread(() -> editor.session().selection())).isEqualTo(Selection.of(Place.START, "twining-2"));
        assertThat(hands.nothingCarried()).isTrue();
    }

    @Test
    void aTopThatFollowsGetsTheBlockThroughTheStart() {
        Point soumak = hands.on(Place.TOP, "soumak", false);

        hands.press(wares, hands.ware("Waste band"));
        hands.dragTo(hands.canvas(), new Point(soumak.x, soumak.y - 1));
        waitFor("the new block to be tried out", () -> hands.shownIds(Place.TOP).contains("waste-2"));
        hands.release();

        assertThat(hands.ids(Place.TOP))
                .containsExactly("fold", "soumak", "waste-2", "facing", "stiff", "twining", "waste");
        assertThat(hands.ids(Place.START))
                .containsExactly("ordering", "waste", "twining", "stiff", "facing", "waste-2", "soumak", "fold");
        assertThat(onEventThread(() -> editor.session().piece().topFollows())).isTrue();
    }

    @Test
    void escapeWhileABlockIsCarriedLeavesAllAsItWas() {
        hands.press(wares, hands.ware("Soumak"));
        hands.dragTo(hands.canvas(), hands.on(Place.START, "waste", false));
        waitFor(
                "the new block to be tried out",
                () -> hands.shownIds(Place.START).contains("soumak-2"));

        hands.key(KeyEvent.VK_ESCAPE);
        assertThat(hands.shownIds(Place.START)).doesNotContain("soumak-2");
        assertThat(hands.nothingCarried()).isTrue();
        hands.release();

        assertThat(hands.ids(Place.START)).doesNotContain("soumak-2");
        assertThat(hands.steps()).isZero();
    }

    /** Its place, and its name among the others, were those of another piece. */
    @Test
    void aBlockThatIsCarriedIsGivenUpWhenAKeyChangesThePiece() {
        select(Place.START, "waste");
        hands.ctrl(KeyEvent.VK_B);
        hands.waitForFocus("wares");
        hands.type("twin");
        hands.key(KeyEvent.VK_ENTER);
        hands.ctrl(KeyEvent.VK_Z);
        hands.press(wares, hands.ware("Twining"));
        Point there = hands.on(Place.START, "facing", false);
        hands.dragTo(hands.canvas(), there);
        waitFor(
                "the new block to be tried out",
                () -> hands.shownIds(Place.START).contains("twining-2"));

        hands.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        hands.dragTo(hands.canvas(), new Point(there.x, there.y - 9));
        assertThat(hands.nothingCarried()).isTrue();
        hands.release();

        assertThat(hands.ids(Place.START))
                .isEqualTo(hands.shownIds(Place.START))
                .startsWith("ordering", "waste", "twining-2", "twining", "stiff");
        assertThat(hands.steps()).isEqualTo(1);
    }

    @Test
    void aBlockLetGoBesideThePieceIsNotPutIn() {
        Point twining = hands.ware("Twining");
        Rectangle seen = onEventThread(wares::getVisibleRect);
        hands.press(wares, twining);
        hands.dragTo(hands.canvas(), hands.on(Place.START, "waste", false));
        waitFor(
                "the new block to be tried out",
                () -> hands.shownIds(Place.START).contains("twining-2"));
        assertThat(onEventThread(wares::getVisibleRect)).isEqualTo(seen);
        hands.dragTo(wares, twining);
        hands.release();

        waitFor("the new block to be gone", () -> !hands.shownIds(Place.START).contains("twining-2"));
        assertThat(hands.steps()).isZero();
    }

    @Test
    void enterPutsABlockInAboveTheSelectedOneAndTheNextAboveThat() {
        select(Place.START, "waste");
        hands.ctrl(KeyEvent.VK_B);
        hands.waitForFocus("wares");

        hands.type("half");
        hands.key(KeyEvent.VK_ENTER);
        hands.key(KeyEvent.VK_ENTER);

        assertThat(hands.ids(Place.START)).startsWith("ordering", "waste", "hitches", "hitches-2", "twining");
        hands.key(KeyEvent.VK_ESCAPE);
        hands.waitForFocus("canvas");
        assertThat(hands.steps()).isEqualTo(2);
    }

    @Test
    void foldedAwayItStaysSoInTheNextWindow() {
        hands.click("shelf.heading");
        assertThat(onEventThread(wares::isShowing)).isFalse();

        BlockShelf next = another().find("shelf", BlockShelf.class);
        assertThat(onEventThread(next::isOpen)).isFalse();
        assertThat(new Settings(Optional.of(folder.resolve("settings.properties"))).get("shelf.open"))
                .contains("false");
    }

    @Test
    void aBlockIsDraggedFromTheStartIntoATopOfItsOwnAndNotIntoOneThatFollows() {
        Point top = hands.on(Place.TOP, "stiff", false);
        hands.press(hands.canvas(), hands.on(Place.START, "twining", false));
        hands.dragTo(hands.canvas(), top);
        hands.release();
        assertThat(hands.steps()).isZero();

        onEventThread(() -> {
            editor.session().edit(editor.desk().edits().topOnItsOwn());
            return null;
        });
        top = hands.on(Place.TOP, "stiff", false);
        Point again = hands.on(Place.START, "twining", false);
        // at the same spot so soon it would be a double click
        hands.press(hands.canvas(), new Point(again.x + 12, again.y));
        hands.dragTo(hands.canvas(), new Point(top.x, top.y + 1));
        hands.release();

        assertThat(hands.ids(Place.START)).doesNotContain("twining");
        assertThat(hands.ids(Place.TOP))
                .containsExactly("fold", "soumak", "facing", "twining-2", "stiff", "twining", "waste");
        hands.ctrl(KeyEvent.VK_Z);
        assertThat(hands.ids(Place.START)).contains("twining");
        assertThat(hands.ids(Place.TOP)).doesNotContain("twining-2");
    }

    @Test
    void aClickInTheHistoryGoesThereAndBringsTheSelectionBack() {
        select(Place.START, "stiff");
        hands.ctrl(KeyEvent.VK_UP);
        select(Place.START, "waste");
        hands.key(KeyEvent.VK_DELETE);
        select(Place.START, "soumak");
        hands.ctrl(KeyEvent.VK_D);
        assertThat(hands.steps()).isEqualTo(3);
        var last = hands.ids(Place.START);
        hands.tab("History");

        hands.clickRow("history", 1);

        assertThat(hands.done()).isEqualTo(1);
        assertThat(hands.ids(Place.START))
                .containsExactly("ordering", "waste", "twining", "facing", "stiff", "soumak", "fold");
        assertThat(onEventThread(() -> editor.session().selection())).isEqualTo(Selection.of(Place.START, "waste"));
        JList<?> history = hands.find("history", JList.class);
        assertThat(onEventThread(() -> history.getModel().getElementAt(2).toString()))
                .isEqualTo("Delete Waste band — taken back");

        hands.key(KeyEvent.VK_END);
        hands.key(KeyEvent.VK_ENTER);
        assertThat(hands.ids(Place.START)).isEqualTo(last);
        hands.key(KeyEvent.VK_HOME);
        hands.key(KeyEvent.VK_ENTER);
        assertThat(hands.done()).isZero();
        assertThat(onEventThread(() -> editor.session().dirty())).isFalse();
    }

    @Test
    void theHistorySaysWhichStateIsOnFile() {
        Answers answers = new Answers();
        answers.save = Optional.of(folder.resolve("marsh.json"));
        onEventThread(() -> {
            editor.files().setQuestions(answers);
            return null;
        });
        select(Place.START, "stiff");
        hands.ctrl(KeyEvent.VK_UP);
        hands.ctrl(KeyEvent.VK_S);
        hands.ctrl(KeyEvent.VK_UP);
        hands.ctrl(KeyEvent.VK_H);
        hands.waitForFocus("history");

        JList<?> history = hands.find("history", JList.class);
        assertThat(onEventThread(() -> java.util.stream.IntStream.range(
                                0, history.getModel().getSize())
                        .mapToObj(i -> history.getModel().getElementAt(i).toString())
                        .toList()))
                .containsExactly("As it was at first", "Move Stiff band up — saved", "Move Stiff band up");
    }

    private String pasted(String text) {
        onEventThread(() -> {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
            return null;
        });
        hands.ctrl(KeyEvent.VK_V);
        return WindowTest.message(editor.frame());
    }

    @Test
    void blocksComeFromATextEditorAndWhatIsWrongWithThemIsSaid() {
        select(Place.START, "waste");
        assertThat(pasted("Weave a few picks, then a row of twining."))
                .isEqualTo("There are no blocks on the clipboard. Copy some first.");
        assertThat(pasted("{\n  \"thrumwrightStructure\": 1,\n  \"id\": \"mine\",\n  \"blocks\": [ {]\n}"))
                .startsWith("What is on the clipboard can’t be read as blocks. Line 4");
        assertThat(pasted("[ 1, 2 ]")).startsWith("What is on the clipboard can’t be read as blocks. Line 1");
        assertThat(hands.steps()).isZero();

        String good = """
                {
                  "thrumwrightStructure": 1, "id": "mine", "name": "Mine", "use": "a try", "source": "own",
                  "blocks": [ { "kind": "twining", "id": "twining", "rows": 2, "group": 1, "twist": "Z", "of": "warp cord" } ]
                }""";
        pasted(good);
        assertThat(hands.ids(Place.START)).startsWith("ordering", "waste", "twining-2", "twining");
        assertThat(hands.steps()).isEqualTo(1);
    }

    @Test
    void blocksAreCopiedIntoAnotherWindow() {
        select(Place.START, "stiff");
        hands.key(KeyEvent.VK_UP, KeyEvent.VK_SHIFT);
        assertThat(onEventThread(() -> editor.session().selection().ids())).containsExactly("stiff", "facing");
        hands.ctrl(KeyEvent.VK_C);
        Hands first = hands;
        var before = first.ids(Place.START);

        Hands second = another();
        select(Place.START, "fold");
        second.ctrl(KeyEvent.VK_V);

        assertThat(second.ids(Place.START)).endsWith("fold", "stiff-2", "facing-2");
        assertThat(first.ids(Place.START)).isEqualTo(before);
        assertThat(room.windows()).hasSize(2);
    }

    /** On the clipboard lies a structure's file, which any program can keep, and what is cut here can be put back here. */
    @Test
    void whatIsCutInOneWindowGoesIntoTheOtherAndBack() throws Exception {
        select(Place.START, "facing");
        var whole = hands.ids(Place.START);
        hands.ctrl(KeyEvent.VK_X);
        Hands first = hands;
        EditorWindow firstEditor = editor;
        assertThat(first.ids(Place.START)).doesNotContain("facing").hasSize(whole.size() - 1);
        String text = onEventThread(
                () -> (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
        assertThat(StructureFile.read(text).structure().end().blocks())
                .extracting(block -> block.id())
                .containsExactly("facing");

        Hands second = another();
        select(Place.START, "soumak");
        second.ctrl(KeyEvent.VK_V);
        assertThat(second.ids(Place.START)).endsWith("soumak", "facing-2", "fold");
        select(Place.START, "twining");
        second.ctrl(KeyEvent.VK_C);

        onEventThread(() -> {
            firstEditor.toFront();
            return null;
        });
        first.focusCanvas();
        first.ctrl(KeyEvent.VK_V);
        assertThat(first.ids(Place.START)).contains("twining-2");
        first.ctrl(KeyEvent.VK_Z);
        first.ctrl(KeyEvent.VK_Z);
        assertThat(first.ids(Place.START)).isEqualTo(whole);
        assertThat(onEventThread(() -> firstEditor.session().dirty())).isFalse();
        assertThat(second.steps()).isEqualTo(1);
    }
}
