package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.block.Block;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.library.Library;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.store.BuiltIn;
import thrumwright.store.StructureFile;
import thrumwright.testing.WindowTest;

/** Uses the library of structures as a weaver would. */
class LibraryIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private final Answers answers = new Answers();
    private Workroom room;
    private EditorWindow editor;
    private FrameFixture frame;

    private void open() {
        frame = window.show(() -> {
            room = new Workroom(new Settings(Optional.empty()), Library.of(folder.resolve("own")));
            editor = room.open(Optional.empty());
            editor.files().setQuestions(answers);
            return editor.frame();
        });
    }

    private String message() {
        return WindowTest.message(frame.target());
    }

    private void command(String id) {
        frame.menuItem("menu." + id).click();
    }

    /** Seek, go down, and take it: the hands never leave the keyboard. */
    @Test
    void aStructureIsSoughtAndUsedByKeyboardAlone() {
        open();
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.START, "facing"));
            return null;
        });
        window.press(KeyEvent.VK_U, KeyEvent.VK_CONTROL);
        DialogFixture dialog = window.dialog("useStructure");
        dialog.textBox("structureSearch").requireFocused();
        frame.robot().enterText("hang bar");
        frame.robot().waitForIdle();
        int found = dialog.list("structures").target().getModel().getSize();
        assertThat(found).isPositive().isLessThan(room.place().library().all().size());
        String about = dialog.textBox("structureAbout").text();
        assertThat(about).contains("On this piece it takes:", "hem", "warp cord", "Source:");
        window.press(KeyEvent.VK_DOWN);
        window.press(KeyEvent.VK_UP);
        Structure chosen = (Structure)
                onEventThread(() -> dialog.list("structures").target().getSelectedValue());
        window.press(KeyEvent.VK_ENTER);
        assertThat(onEventThread(() -> editor.session().piece().start())).isEqualTo(chosen.end());
        assertThat(onEventThread(() -> editor.session().history().undoName()))
                .contains(chosen.name() + " for the start");
        assertThat(onEventThread(() -> editor.session().piece().topFollows())).isTrue();
    }

    /** Two edges are chosen, a third taken away again, and the piece opens beside the one that is open. */
    @Test
    void aSampleWarpIsPutTogether() {
        open();
        command("sample-warp");
        DialogFixture dialog = window.dialog("samples");
        dialog.button("beginSamples").requireDisabled();
        for (String edge : List.of("folded hem", "knotted fringe", "plaited fringe")) {
            dialog.textBox("structureSearch").setText(edge);
            frame.robot().waitForIdle();
            dialog.list("structures").selectItem(0);
            dialog.button("addSample").click();
        }
        assertThat(dialog.list("samples.list").target().getModel().getSize()).isEqualTo(3);
        dialog.list("samples.list").selectItem(0);
        dialog.button("takeSampleAway").click();
        dialog.textBox("samples.width").setText("narrow");
        dialog.button("beginSamples").click();
        assertThat(dialog.target().isShowing()).isTrue();
        dialog.textBox("samples.width").setText("8 cm");
        dialog.button("beginSamples").click();
        frame.robot().waitForIdle();
        EditorWindow samples =
                onEventThread(() -> room.windows().get(room.windows().size() - 1));
        assertThat(onEventThread(() -> samples.session().piece().title())).isEqualTo("Sample warp: 2 edges");
        assertThat(onEventThread(() -> samples.session().piece().warp().width()))
                .isEqualTo(Length.parse("8 cm"));
        assertThat(onEventThread(() -> samples.session().plan().start().blocks()))
                .extracting(block -> block.block().id())
                .contains("s1-label", "s2-gap");
    }

    @Test
    void escapeLeavesThePieceAsItIs() {
        open();
        window.press(KeyEvent.VK_U, KeyEvent.VK_CONTROL);
        DialogFixture dialog = window.dialog("useStructure");
        frame.robot().enterText("no such thing at all");
        frame.robot().waitForIdle();
        dialog.button("useIt").requireDisabled();
        assertThat(dialog.textBox("structureAbout").text()).startsWith("No structure answers");
        window.press(KeyEvent.VK_ESCAPE);
        dialog.requireNotVisible();
        assertThat(onEventThread(() -> editor.session().dirty())).isFalse();
    }

    @Test
    void anEndIsKeptAsAStructureAndFoundAgain() {
        open();
        command("keep-structure");
        DialogFixture dialog = window.dialog("describeStructure");
        dialog.button("keepStructure").requireDisabled();
        dialog.textBox("describe.name").setText("Our panel’s hem");
        dialog.textBox("describe.use").setText("For the panels of the Tuesday class.");
        dialog.textBox("describe.good-for").setText("tuesday, quick ,, class");
        dialog.comboBox("describe.difficulty").selectItem(1);
        dialog.button("keepStructure").click();

        frame.robot().waitForIdle();
        Structure kept = onEventThread(
                () -> room.place().library().byId("our-panels-hem").orElseThrow());
        assertThat(kept.goodFor()).containsExactly("tuesday", "quick", "class");
        assertThat(kept.end()).isEqualTo(editor.session().piece().start());
        assertThat(folder.resolve("own").resolve("our-panels-hem.thrumstructure"))
                .isNotEmptyFile();
        assertThat(message()).startsWith("“Our panel’s hem” is among your structures now.");
        window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
        assertThat(answers.asked).isZero();
    }

    @Test
    void aDroppedStructureIsTakenIn() throws Exception {
        open();
        Path file = Files.writeString(
                folder.resolve("from-a-friend.json"),
                BuiltIn.STRUCTURES
                        .text("raised-edge.json")
                        .replace("\"raised-edge\"", "\"friends-edge\"")
                        .replace("\"name\": \"", "\"colourway\": \"moss\",\n  \"name\": \"Friend’s "));
        onEventThread(() -> {
            editor.files().open(file);
            return null;
        });
        Structure taken =
                onEventThread(() -> room.place().library().byId("friends-edge").orElseThrow());
        assertThat(taken.name()).startsWith("Friend’s ");
        assertThat(Files.readString(folder.resolve("own").resolve("friends-edge.thrumstructure")))
                .contains("moss");
        assertThat(onEventThread(() -> editor.session().dirty())).isFalse();
        assertThat(StructureFile.read(Files.readString(file)).structure()).isEqualTo(taken);
    }

    @Test
    void aDamagedStructureIsRefusedAtItsPlace() throws Exception {
        open();
        Path file = Files.writeString(
                folder.resolve("odd.json"),
                BuiltIn.STRUCTURES.text("raised-edge.json").replace("\"countered\": true", "\"countered\": \"so\""));
        onEventThread(() -> {
            editor.files().open(file);
            return null;
        });
        assertThat(message())
                .startsWith("odd.json wasn’t opened: Line ")
                .contains("countered: this must be true or false, not “so”.");
        assertThat(folder.resolve("own")).doesNotExist();
    }

    @Test
    void theTopMayHaveAStructureOfItsOwn() {
        open();
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.TOP, "facing"));
            return null;
        });
        window.press(KeyEvent.VK_U, KeyEvent.VK_CONTROL);
        DialogFixture dialog = window.dialog("useStructure");
        frame.robot().enterText("plaits");
        window.press(KeyEvent.VK_ENTER);
        dialog.requireNotVisible();
        assertThat(onEventThread(() -> editor.session().piece().topFollows())).isFalse();
        assertThat(onEventThread(() -> editor.session().piece().end(Place.TOP).blocks().stream()
                        .map(Block::id)
                        .toList()))
                .contains("fringe")
                .doesNotContain("ordering");
    }

    /** A teacher keeps an end, thinks better of its texts, and hands it on with what a later program had put into its file. */
    @Test
    void theWordsOfAnOwnStructureCanBeChanged() throws Exception {
        Path own = Files.createDirectories(folder.resolve("own")).resolve("from-the-class.json");
        String text = BuiltIn.STRUCTURES
                .text("raised-edge.json")
                .replace("\"raised-edge\"", "\"class-edge\"")
                .replace("\"name\": \"", "\"colourway\": \"moss\",\n  \"name\": \"Class ");
        Files.writeString(own, text);
        open();
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.START, "facing"));
            return null;
        });
        window.press(KeyEvent.VK_U, KeyEvent.VK_CONTROL);
        DialogFixture dialog = window.dialog("useStructure");
        dialog.button("rewordIt").requireDisabled();
        frame.robot().enterText("class soumak");
        frame.robot().waitForIdle();
        dialog.button("rewordIt").requireEnabled().click();
        DialogFixture words = window.dialog("describeStructure");
        words.textBox("describe.use").setText("For the spring show.");
        words.textBox("describe.good-for").setText("counter, showy");
        words.button("keepStructure").click();
        frame.robot().waitForIdle();
        Structure changed = onEventThread(
                () -> (Structure) dialog.list("structures").target().getSelectedValue());
        assertThat(changed.id()).isEqualTo("class-edge");
        assertThat(changed.use()).isEqualTo("For the spring show.");
        assertThat(Files.readString(own)).contains("For the spring show.", "\"colourway\": \"moss\"");
        answers.save = Optional.of(folder.resolve("to-hand-on.json"));
        dialog.button("writeIt").click();
        frame.robot().waitForIdle();
        assertThat(Files.readString(folder.resolve("to-hand-on.json"))).contains("\"colourway\": \"moss\"", "counter");
        window.press(KeyEvent.VK_ESCAPE);
    }
}
