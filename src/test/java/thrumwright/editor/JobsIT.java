package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JRadioButton;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.block.HemFold;
import thrumwright.editor.files.Dialogs;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.ClassMember;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.store.ClassFile;
import thrumwright.store.PieceFile;
import thrumwright.testing.WindowTest;

/**
 * What is done most, from beginning to end through the window alone, and how many actions it takes: a click, a key or a
 * text that is typed is one.
 */
class JobsIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private Workroom room;
    private EditorWindow editor;
    private Robot robot;
    private int actions;

    private void open() {
        window.show(() -> {
            room = Rooms.with(
                    new Settings(Optional.of(folder.resolve("settings").resolve("settings.properties"))));
            editor = room.open(Optional.empty());
            editor.files().setQuestions(new Dialogs(editor.frame(), room.place(), folder));
            return editor.frame();
        });
        new Hands(window, editor);
        robot = window.robot();
    }

    private void key(int key, int... held) {
        actions++;
        window.press(key, held);
    }

    private void type(String text) {
        actions++;
        robot.enterText(text);
        robot.waitForIdle();
    }

    private void click(Component component) {
        actions++;
        robot.click(component);
        robot.waitForIdle();
    }

    private void click(String name) {
        click(robot.finder().find(each -> name.equals(each.getName()) && each.isShowing()));
    }

    /** Opens a box and clicks what is wanted. */
    private void choose(String box, String wanted) {
        actions += 2;
        JComboBox<?> boxes = (JComboBox<?>) robot.finder().find(each -> box.equals(each.getName()) && each.isShowing());
        onEventThread(() -> {
            for (int i = 0; i < boxes.getItemCount(); i++) {
                if (boxes.getItemAt(i).toString().equals(wanted)) {
                    boxes.setSelectedIndex(i);
                    return i;
                }
            }
            throw new AssertionError("no “" + wanted + "” in " + box);
        });
        robot.waitForIdle();
    }

    /** A field is clicked, and what is typed takes the place of what stood there. */
    private void fill(String field, String text) {
        JComponent box = (JComponent) robot.finder().find(each -> field.equals(each.getName()) && each.isShowing());
        click(box);
        waitFor("the keyboard at " + field, () -> onEventThread(box::isFocusOwner));
        type(text);
    }

    private void approve() {
        actions++;
        window.files().approve();
    }

    private Piece piece() {
        return onEventThread(() -> editor.session().piece());
    }

    private Path saved(String ending) throws java.io.IOException {
        waitFor("a file that ends with " + ending, () -> found(ending).isPresent());
        return found(ending).orElseThrow();
    }

    private Optional<Path> found(String ending) throws java.io.IOException {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).findFirst();
        }
    }

    /** The demo piece is untouched, so that the new one takes its window. */
    @Test
    void aPanelAndThenAFringeAndTheCards() throws Exception {
        open();
        key(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
        DialogFixture begin = window.dialog("begin");
        type("folded hem");
        choose("begin.warp", "Cotton seine twine 12/6");
        choose("begin.weft", "Wool 6/2 Nm");
        click(begin.button("beginWithIt").target());
        waitFor("the new piece", () -> piece().start().blocks().stream().anyMatch(block -> block instanceof HemFold));
        fill("field.glance.title", "Heron");
        fill("field.glance.warp.width", "30");
        fill("field.glance.warp.sett", "4/cm");
        fill("field.glance.design.height", "40");
        fill("field.glance.loom.open", "80");
        key(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        approve();
        Piece panel = PieceFile.read(Files.readString(saved("heron.thrum"))).piece();
        assertThat(panel.warp().ends()).isEqualTo(120);
        assertThat(panel.yarn(panel.warp().yarnId()).name()).isEqualTo("Cotton seine twine 12/6");
        assertThat(panel.loom().open().text()).isEqualTo("80 cm");
        assertThat(actions).as("actions for a panel").isLessThanOrEqualTo(30);

        actions = 0;
        key(KeyEvent.VK_U, KeyEvent.VK_CONTROL);
        window.dialog("useStructure");
        type("knotted fringe");
        key(KeyEvent.VK_ENTER);
        waitFor(
                "the fringe",
                () -> piece().start().blocks().stream()
                        .anyMatch(block -> block.finish().isPresent()));
        key(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        waitFor(
                "the fringe to be saved",
                () -> onEventThread(() -> !editor.session().dirty()));
        assertThat(piece().end(Place.TOP).blocks())
                .anyMatch(block -> block.finish().isPresent());
        assertThat(actions).as("actions for the fringe").isLessThanOrEqualTo(12);

        actions = 0;
        key(KeyEvent.VK_E, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        approve();
        assertThat(saved("cards.pdf")).isNotEmptyFile();
        assertThat(actions).as("actions for the cards").isLessThanOrEqualTo(3);
        nextPieceBeginsWithThem();
    }

    /** Loom and yarns of the piece that was saved are offered for the next one, and the loom is chosen already. */
    private void nextPieceBeginsWithThem() {
        onEventThread(() -> {
            editor.frame().toFront();
            return null;
        });
        List<String> yarns = onEventThread(() -> room.place().cupboard().stash().yarns().stream()
                .map(each -> each.name())
                .toList());
        assertThat(yarns).contains("Cotton seine twine 12/6", "Wool 6/2 Nm");
        assertThat(onEventThread(() ->
                        room.place().cupboard().stash().looms().get(0).open().text()))
                .isEqualTo("80 cm");
    }

    /** The kind of loom is chosen with the rest, in words and with a picture, and no other field is there for it. */
    @Test
    void aPieceOnNails() {
        open();
        key(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
        DialogFixture begin = window.dialog("begin");
        assertThat(onEventThread(() -> robot.finder()
                        .findAll(begin.target(), each -> each instanceof JComboBox && each.isShowing())
                        .size()))
                .as("boxes in the dialog")
                .isEqualTo(3);
        choose("begin.loom", "nails");
        assertThat(onEventThread(() ->
                        ((JTextComponent) robot.finder().findByName(begin.target(), "begin.kind.about")).getText()))
                .isEqualTo("Round nails at a fixed pitch.");
        type("folded hem");
        click(begin.button("beginWithIt").target());
        waitFor("the new piece", () -> piece().loom().kind().key().equals("nails"));
        assertThat(piece().start().blocks()).isNotEmpty();
    }

    /** From nothing to the printed cards by hand, on a loom of every kind, in centimetres and inches by turns. */
    @Test
    void aPieceOnEveryKindOfLoom() throws Exception {
        Texts words = Texts.of(Locale.UK);
        int turn = 0;
        for (LoomKind kind : LoomKinds.all(Beginnings.empty(UnitSystem.METRIC))) {
            open();
            key(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
            DialogFixture begin = window.dialog("begin");
            UnitSystem units = UnitSystem.values()[turn++ % 2];
            click(begin.radioButton(new GenericTypeMatcher<>(JRadioButton.class) {
                        @Override
                        protected boolean isMatching(JRadioButton each) {
                            return each.getText()
                                    .equals(words.say(units == UnitSystem.METRIC ? "units.metric" : "units.inches"));
                        }
                    })
                    .target());
            String name = words.say("loom-kind." + kind.key());
            boolean usual = kind instanceof LoomKind.BarToBar;
            choose("begin.loom", usual ? words.say("begin.loom.usual", Map.of("kind", name)) : name);
            type("folded hem");
            click(begin.button("beginWithIt").target());
            waitFor(
                    "a piece on " + kind.key(),
                    () -> piece().loom().kind().key().equals(kind.key()));
            assertThat(piece().habits().units()).isEqualTo(units);
            fill("field.glance.title", kind.key());
            key(KeyEvent.VK_E, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
            approve();
            assertThat(saved(kind.key() + "-cards.pdf")).isNotEmptyFile();
            onEventThread(() -> {
                editor.frame().dispose();
                return null;
            });
        }
    }

    @Test
    void aClassOfSix() throws Exception {
        open();
        key(KeyEvent.VK_C, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        FrameFixture looms = window.frame("class");
        List<String> names = List.of("Asta", "Bo", "Cai", "Dag", "Eir", "Finn");
        fill("field.member.name", names.get(0));
        for (String name : names.subList(1, names.size())) {
            key(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
            type(name);
        }
        key(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        approve();
        ClassFile file = ClassFile.read(saved(".thrumclass"));
        assertThat(file.set().members()).extracting(ClassMember::name).containsExactlyElementsOf(names);
        click(looms.button("tool.class-pdf").target());
        approve();
        assertThat(saved(".pdf")).exists();
        assertThat(actions).as("actions for a class of six").isLessThanOrEqualTo(22);
    }
}
