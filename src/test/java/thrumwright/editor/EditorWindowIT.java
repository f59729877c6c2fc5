package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.block.Block;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.files.Dialogs;
import thrumwright.editor.files.Questions;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Place;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.testing.WindowTest;

/** Uses the window as a weaver would. */
class EditorWindowIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private final Answers answers = new Answers();
    private Workroom room;
    private EditorWindow editor;
    private FrameFixture frame;

    private void open(Optional<Path> file) {
        frame = window.show(() -> {
            room = Rooms.forgetful();
            editor = room.open(file);
            editor.files().setQuestions(answers);
            return editor.frame();
        });
    }

    private PieceCanvas canvas() {
        return frame.robot().finder().findByName(frame.target(), "canvas", PieceCanvas.class);
    }

    private String label(Place place, String id) {
        LabelColumn labels = frame.robot().finder().findByName(frame.target(), "labels", LabelColumn.class);
        return onEventThread(
                () -> labels.wording(place, id).map(words -> words.amount()).orElse("none"));
    }

    private void select(Place place, String id) {
        onEventThread(() -> {
            editor.session().select(Selection.of(place, id));
            return null;
        });
        frame.robot().waitForIdle();
    }

    private void focusCanvas() {
        frame.robot().waitForIdle();
        onEventThread(() -> canvas().requestFocusInWindow());
        waitFor("the keyboard at the canvas", () -> onEventThread(() -> canvas().isFocusOwner()));
    }

    private void focus(String field) {
        var text = frame.textBox(field).focus().target();
        waitFor("the keyboard at " + field, () -> onEventThread(text::isFocusOwner));
    }

    @Test
    void changesPicksSeesThemEverywhereUndoesRedoesSavesAndOpensAgain() throws FileProblem {
        open(Optional.empty());
        assertThat(frame.target().getTitle()).startsWith("Saltmarsh at low water");
        clickOn(Place.START, "facing");
        frame.textBox("field.block.amount").requireText("6 picks");

        window.typeOver(frame, "field.block.amount", "9");

        assertThat(label(Place.START, "facing")).isEqualTo("9 picks");
        assertThat(label(Place.TOP, "facing")).isEqualTo("9 picks");
        window.press(KeyEvent.VK_ENTER);
        frame.textBox("field.block.amount").requireText("9 picks");
        assertThat(frame.target().getTitle()).contains("not saved");

        window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(label(Place.START, "facing")).isEqualTo("6 picks");
        frame.textBox("field.block.amount").requireText("6 picks");
        window.press(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
        assertThat(label(Place.START, "facing")).isEqualTo("9 picks");

        Path file = folder.resolve("marsh.json");
        answers.save = Optional.of(file);
        window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        assertThat(frame.target().getTitle()).doesNotContain("not saved");
        assertThat(PieceFile.read(SafeFile.read(file)).piece())
                .isEqualTo(onEventThread(() -> editor.session().piece()));

        FrameFixture first = frame;
        open(Optional.of(file));
        assertThat(label(Place.START, "facing")).isEqualTo("9 picks");
        first.cleanUp();
    }

    /** A click in the middle of a block on the canvas. */
    private void clickOn(Place place, String id) {
        PieceCanvas canvas = canvas();
        java.awt.Point point = onEventThread(() -> {
            var spot = canvas.map().spot(place, id).orElseThrow();
            return new java.awt.Point(canvas.getWidth() / 2, (int) Math.round(spot.middle()));
        });
        frame.robot().click(canvas, point);
        frame.robot().waitForIdle();
    }

    @Test
    void wrongInputIsMarkedAtItsFieldWithTheReasonAndNeverLost() {
        open(Optional.empty());
        select(Place.START, "facing");

        window.typeOver(frame, "field.block.amount", "a few");
        window.press(KeyEvent.VK_ENTER);

        frame.textBox("field.block.amount").requireText("a few");
        assertThat(reason("field.block.amount")).contains("“a few” is not a length", "Or say how many: “6 picks”.");
        assertThat(frame.textBox("field.block.amount").target().getClientProperty("JComponent.outline"))
                .isEqualTo("error");
        assertThat(label(Place.START, "facing")).isEqualTo("6 picks");

        select(Place.START, "stiff");
        select(Place.START, "facing");
        frame.textBox("field.block.amount").requireText("a few");
        assertThat(reason("field.block.amount")).contains("not a length");

        focus("field.block.amount");
        window.press(KeyEvent.VK_ESCAPE);
        frame.textBox("field.block.amount").requireText("6 picks");
        assertThat(reason("field.block.amount")).isEmpty();
    }

    /** What stands under a field; nothing if the reason isn't shown. */
    private String reason(String field) {
        return onEventThread(() -> {
            var found = frame.robot()
                    .finder()
                    .findAll(
                            frame.target(),
                            new GenericTypeMatcher<javax.swing.text.JTextComponent>(
                                    javax.swing.text.JTextComponent.class) {
                                @Override
                                protected boolean isMatching(javax.swing.text.JTextComponent component) {
                                    return (field + ".reason").equals(component.getName()) && component.isVisible();
                                }
                            });
            return found.stream()
                    .map(javax.swing.text.JTextComponent::getText)
                    .findFirst()
                    .orElse("");
        });
    }

    @Test
    void addsMovesAndDeletesBlocksByKeyboard() {
        open(Optional.empty());
        select(Place.START, "twining");

        onEventThread(() -> {
            editor.frame()
                    .getRootPane()
                    .getActionMap()
                    .get("add-half-hitch")
                    .actionPerformed(new java.awt.event.ActionEvent(this, 0, ""));
            return null;
        });
        assertThat(onEventThread(() -> editor.session().piece().start().indexOf("hitches")))
                .isEqualTo(3);
        assertThat(label(Place.TOP, "hitches")).isEqualTo("1 row");

        focusCanvas();
        window.press(KeyEvent.VK_UP, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(() -> editor.session().piece().start().indexOf("hitches")))
                .isEqualTo(4);
        window.press(KeyEvent.VK_DOWN, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(() -> editor.session().piece().start().indexOf("hitches")))
                .isEqualTo(3);

        window.press(KeyEvent.VK_DELETE);
        assertThat(onEventThread(() -> editor.session().piece().start().indexOf("hitches")))
                .isEqualTo(-1);
        window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(() -> editor.session().selection())).isEqualTo(Selection.of(Place.START, "hitches"));
    }

    /** Every view beside the canvas opens, and says what it shows to those who can't see it. */
    @Test
    void everyViewOpensAndDescribesItself() {
        open(Optional.empty());
        var views = frame.tabbedPane("views");
        for (String title : views.tabTitles()) {
            views.selectTab(title);
            frame.robot().waitForIdle();
        }
        for (String picture : List.of("budget", "hems")) {
            var component = frame.robot().finder().findByName(frame.target(), picture, JComponent.class, false);
            assertThat(onEventThread(() -> component.getAccessibleContext().getAccessibleDescription()))
                    .isNotBlank();
        }
        frame.robot()
                .finder()
                .findAll(frame.target(), component -> "message".equals(component.getName()))
                .forEach(
                        message -> assertThat(onEventThread(message::isShowing)).isFalse());
    }

    @Test
    void arrowKeysWalkOverAllBlocksFromTheTopToTheBottom() {
        open(Optional.empty());
        focusCanvas();

        window.press(KeyEvent.VK_HOME);
        assertThat(onEventThread(() -> editor.session().selection())).isEqualTo(Selection.of(Place.TOP, "waste"));
        int blocks = onEventThread(() -> canvas().map().spots().size());
        for (int i = 1; i < blocks; i++) {
            window.press(KeyEvent.VK_DOWN);
        }

        assertThat(onEventThread(() -> editor.session().selection())).isEqualTo(Selection.of(Place.START, "ordering"));
    }

    @Test
    void everyBlockAndRowIsAnAccessibleChildWithNameRoleAndValue() {
        open(Optional.empty());

        onEventThread(() -> {
            AccessibleContext canvas = canvas().getAccessibleContext();
            assertThat(canvas.getAccessibleName()).isEqualTo("The piece on the loom");
            assertThat(canvas.getAccessibleChildrenCount()).isEqualTo(13);
            for (int i = 0; i < canvas.getAccessibleChildrenCount(); i++) {
                Accessible child = canvas.getAccessibleChild(i);
                AccessibleContext block = child.getAccessibleContext();
                assertThat(block.getAccessibleName()).matches(".+, the (start|top)");
                assertThat(block.getAccessibleRole()).isEqualTo(AccessibleRole.LIST_ITEM);
                assertThat(block.getAccessibleIndexInParent()).isEqualTo(i);
                assertThat(block.getAccessibleComponent().getBounds().height).isPositive();
            }
            AccessibleContext waste = canvas.getAccessibleChild(0).getAccessibleContext();
            assertThat(waste.getAccessibleValue().getCurrentAccessibleValue()).isEqualTo(12);
            assertThat(waste.getAccessibleDescription()).startsWith("12 picks, ");
            assertThat(waste.getAccessibleChildrenCount()).isEqualTo(12);
            AccessibleContext first = waste.getAccessibleChild(0).getAccessibleContext();
            AccessibleContext second = waste.getAccessibleChild(1).getAccessibleContext();
            assertThat(first.getAccessibleName()).isEqualTo("Row 1 of Waste band, the top");
            assertThat(first.getAccessibleDescription())
                    .matches("(over|under) the (left|right) edge end, from (left to right|right to left)");
            assertThat(second.getAccessibleDescription())
                    .matches("(over|under) the (left|right) edge end, from (left to right|right to left)")
                    // on an even warp picks from either side meet the end where they begin alike
                    .startsWith(first.getAccessibleDescription().substring(0, 5))
                    .doesNotEndWith(first.getAccessibleDescription().split(", from ")[1]);
            assertThat(first.getAccessibleRole()).isEqualTo(AccessibleRole.LIST_ITEM);
            assertThat(second.getAccessibleValue().getCurrentAccessibleValue()).isEqualTo(2);
            assertThat(second.getAccessibleIndexInParent()).isEqualTo(1);
            assertThat(first.getAccessibleComponent().getLocationOnScreen().y)
                    .isGreaterThan(second.getAccessibleComponent().getLocationOnScreen().y);
            AccessibleContext twining = canvas.getAccessibleChild(1).getAccessibleContext();
            assertThat(twining.getAccessibleChild(0).getAccessibleContext().getAccessibleDescription())
                    .startsWith("stitches lean like ");
            return null;
        });
    }

    @Test
    void aTopThatFollowsSendsTheWeaverToTheStartOrStandsOnItsOwn() {
        open(Optional.empty());
        select(Place.TOP, "facing");

        frame.button("goToStart").click();
        assertThat(onEventThread(() -> editor.session().selection())).isEqualTo(Selection.of(Place.START, "facing"));

        select(Place.TOP, "facing");
        frame.button("topOnItsOwn").click();
        window.typeOver(frame, "field.block.amount", "8 picks");
        assertThat(label(Place.TOP, "facing")).isEqualTo("8 picks");
        assertThat(label(Place.START, "facing")).isEqualTo("6 picks");
        assertThat(findings()).hasSize(1);
    }

    @Test
    void aFindingSelectsItsBlock() {
        open(Optional.empty());
        select(Place.START, "facing");
        window.typeOver(frame, "field.block.amount", "1");
        window.press(KeyEvent.VK_ENTER);
        select(Place.START, "stiff");
        window.typeOver(frame, "field.block.amount", "1");
        window.press(KeyEvent.VK_ENTER);

        frame.robot().click(findings().get(0));
        frame.robot().waitForIdle();

        assertThat(onEventThread(() -> editor.session().selection())).isEqualTo(Selection.of(Place.START, "fold"));
    }

    private List<java.awt.Component> findings() {
        JComponent list = frame.robot().finder().findByName(frame.target(), "findings", JComponent.class);
        return onEventThread(() -> List.of(list.getComponents()));
    }

    @Test
    void aButtonMendsAFindingAndUndoTakesThatBack() {
        open(Optional.empty());
        select(Place.START, "waste");
        focusCanvas();
        window.press(KeyEvent.VK_DELETE);
        assertThat(onEventThread(() -> editor.session().findings().all())).hasSize(1);

        onEventThread(() -> findings().get(0).requestFocusInWindow());
        frame.robot().waitForIdle();
        window.press(KeyEvent.VK_TAB);
        frame.button("repair").requireText("Add a waste band of 12 picks outside the edge");
        window.press(KeyEvent.VK_SPACE);

        assertThat(onEventThread(() -> editor.session().findings().all())).isEmpty();
        assertThat(onEventThread(() -> editor.session().history().undoName()))
                .contains("add a waste band of 12 picks outside the edge");
        window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(onEventThread(() -> editor.session().findings().all())).hasSize(1);
        frame.button("repair").click();
        assertThat(onEventThread(() -> editor.session().findings().all())).isEmpty();
    }

    @Test
    void asksInADialogBeforeClosingWhatIsNotSaved() {
        open(Optional.empty());
        onEventThread(() -> {
            editor.files().setQuestions(new Dialogs(editor.frame(), room.place(), folder));
            return null;
        });
        select(Place.START, "facing");
        window.typeOver(frame, "field.block.amount", "7");

        frame.close();
        JOptionPaneFixture question = window.question();
        assertThat(String.valueOf(onEventThread(() -> question.target().getMessage())))
                .startsWith("“Saltmarsh at low water” has changes that aren’t saved.");
        question.buttonWithText("Stay").click();

        frame.requireVisible();
    }

    @Test
    void stayingKeepsTheWindowAndLeavingClosesIt() {
        open(Optional.empty());
        select(Place.START, "facing");
        window.typeOver(frame, "field.block.amount", "7");

        window.press(KeyEvent.VK_W, KeyEvent.VK_CONTROL);
        assertThat(answers.asked).isEqualTo(1);
        frame.requireVisible();

        answers.closing = Questions.Closing.LEAVE;
        window.press(KeyEvent.VK_W, KeyEvent.VK_CONTROL);
        frame.requireNotVisible();
        assertThat(room.windows()).isEmpty();
    }

    @Test
    void aDamagedFileIsRefusedInASentenceAndThePieceStays() throws Exception {
        open(Optional.empty());
        Path file = folder.resolve("damaged.json");
        Files.writeString(file, "{ \"thrumwright\": 1, \"title\": ");
        answers.open = Optional.of(file);

        window.press(KeyEvent.VK_O, KeyEvent.VK_CONTROL);

        assertThat(WindowTest.message(frame.target())).startsWith("damaged.json wasn’t opened: Line 1");
        assertThat(onEventThread(() -> editor.session().piece().title())).isEqualTo("Saltmarsh at low water");
    }

    @Test
    void aFileThatChangedOnDiskIsNotWrittenOverUnasked() throws Exception {
        Path file = folder.resolve("marsh.json");
        open(Optional.empty());
        answers.save = Optional.of(file);
        window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        String other = Files.readString(file).replace("Saltmarsh at low water", "Somebody else’s marsh, much later");
        Files.writeString(file, other);
        select(Place.START, "facing");
        window.typeOver(frame, "field.block.amount", "7");
        answers.asked = 0;

        window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);

        assertThat(answers.asked).isEqualTo(1);
        assertThat(Files.readString(file)).isEqualTo(other);
    }

    @Test
    void beginsANewPieceFromAStructure() {
        open(Optional.empty());
        onEventThread(() -> {
            editor.files().setQuestions(new Dialogs(editor.frame(), room.place(), folder));
            return null;
        });
        window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);

        DialogFixture begin = window.dialog("begin");
        begin.list("structures").selectItem(1);
        begin.button("beginWithIt").click();

        frame.robot().waitForIdle();
        assertThat(onEventThread(() -> editor.session().piece().habits().units()))
                .isEqualTo(UnitSystem.METRIC);
        assertThat(onEventThread(() -> editor.session().piece().start().blocks().stream()
                        .map(Block::id)
                        .toList()))
                .isEqualTo(room.place().library().all().get(1).end().blocks().stream()
                        .map(Block::id)
                        .toList());
    }
}
