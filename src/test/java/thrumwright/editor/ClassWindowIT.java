package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.files.Questions;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.piece.ClassMember;
import thrumwright.store.BuiltIn;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.testing.WindowTest;

/** Makes a class, saves it and writes its sheets, as a teacher would. */
class ClassWindowIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private final Answers answers = new Answers();
    private Workroom room;
    private EditorWindow editor;
    private FrameFixture frame;
    private FrameFixture looms;

    private void open(Optional<Path> file) {
        frame = window.show(() -> {
            room = Rooms.forgetful();
            editor = room.open(file);
            editor.files().setQuestions(answers);
            return editor.frame();
        });
    }

    /** A piece of few warp ends, whose sheets are quickly written. */
    private Path wave() throws IOException {
        return Files.writeString(folder.resolve("wave.json"), BuiltIn.DEMO.text("first-wave.json"));
    }

    private void openClass() {
        window.press(KeyEvent.VK_C, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        findClass();
    }

    private void findClass() {
        looms = window.frame("class");
    }

    private ClassSession session() {
        return editor.classWindow().session();
    }

    private List<ClassMember> members() {
        return onEventThread(() -> session().set().members());
    }

    private String cell(int row, int column) {
        return looms.table("members")
                .target()
                .getModel()
                .getValueAt(row, column)
                .toString();
    }

    private String area(String name) {
        return onEventThread(() -> {
            JTextArea text = (javax.swing.JTextArea)
                    looms.robot().finder().find(looms.target(), each -> name.equals(each.getName()));
            return text.isShowing() ? text.getText() : "";
        });
    }

    private String message() {
        return WindowTest.message(looms.target());
    }

    private void waitForMessage(String says) {
        waitFor("the message “" + says + "”", () -> message().contains(says));
    }

    @Test
    void aTeacherTypesTheLoomsSavesThemAndFindsThemAgain() throws IOException, FileProblem {
        open(Optional.of(wave()));
        openClass();
        assertThat(looms.target().getTitle()).startsWith("Class: Class");
        window.typeOver(looms, "field.class.title", "Saturday");
        window.typeOver(looms, "field.member.name", "Asta");
        looms.button("tool.class-add").click();
        window.typeOver(looms, "field.member.name", "Bo");
        window.typeOver(looms, "field.member.width", "10");
        window.typeOver(looms, "field.member.sett", "4/cm");
        looms.comboBox("field.member.posts").selectItem("none");
        looms.button("tool.class-add").click();
        assertThat(looms.target().getTitle()).startsWith("Class: Saturday (not saved)");
        assertThat(members()).extracting(ClassMember::name).containsExactly("Asta", "Bo", "");
        assertThat(cell(1, 3)).isEqualTo("10 cm");
        assertThat(cell(1, 5)).isEqualTo("40");
        assertThat(cell(1, 6)).isEqualTo("none");
        assertThat(cell(2, 1)).isEqualTo("loom 3");

        Path file = folder.resolve("saturday.json");
        answers.save = Optional.of(file);
        window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        waitForMessage("The piece stays in its own file.");
        assertThat(looms.target().getTitle()).doesNotContain("not saved");
        ClassFile saved = ClassFile.read(file);
        assertThat(saved.pieceName()).contains("wave.json");
        assertThat(saved.set().members()).isEqualTo(members());

        window.typeOver(looms, "field.member.name", "Cai");
        answers.closing = Questions.Closing.LEAVE;
        answers.open = Optional.of(file);
        window.press(KeyEvent.VK_O, KeyEvent.VK_CONTROL);
        assertThat(members()).isEqualTo(saved.set().members());
    }

    @Test
    void whatIsWrongIsMarkedAtItsFieldAndChangesNothing() {
        open(Optional.empty());
        openClass();
        window.typeOver(looms, "field.member.width", "wide");
        waitFor("the reason", () -> area("field.member.width.reason").contains("is not a length"));
        assertThat(members().get(0).width()).isEmpty();
        window.typeOver(looms, "field.member.width", "31 cm");
        waitFor("the reason", () -> area("field.member.width.reason").contains("doesn't fit between the posts"));
        assertThat(members().get(0).width()).isNotEqualTo(Optional.of(Length.parse("31 cm")));
        looms.comboBox("field.member.posts").selectItem("none");
        window.typeOver(looms, "field.member.width", "32 cm");
        assertThat(members().get(0).width()).contains(Length.parse("32 cm"));
        assertThat(area("field.member.width.reason")).isEmpty();
    }

    @Test
    void everyStepCanBeTakenBackAndDoneAgain() throws IOException {
        open(Optional.of(wave()));
        openClass();
        window.typeOver(looms, "field.member.name", "Asta");
        window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
        window.typeOver(looms, "field.member.open", "90 cm");
        looms.table("members").selectRows(0);
        looms.button("tool.class-remove").click();
        assertThat(members()).hasSize(1);
        looms.button("tool.class-remove").requireDisabled();
        window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(members()).extracting(ClassMember::name).containsExactly("Asta", "");
        window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(members().get(1).open()).isEmpty();
        window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(members()).containsExactly(ClassMember.named(""));
        looms.button("tool.class-undo").requireDisabled();
        for (int i = 0; i < 3; i++) {
            window.press(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
        }
        assertThat(members().get(0).name()).isEqualTo("Asta");
        assertThat(members().get(1).open()).isPresent();
        looms.textBox("field.member.open").requireText("90 cm");
    }

    @Test
    void theClassFollowsItsPiece() throws IOException {
        open(Optional.of(wave()));
        openClass();
        String before = cell(0, 5);
        onEventThread(() -> {
            editor.session()
                    .edit(editor.desk()
                            .edits()
                            .field(
                                    "Width",
                                    "warp",
                                    piece -> piece.withWarp(piece.warp().withWidth(Length.parse("9 cm")))));
            return null;
        });
        looms.robot().waitForIdle();
        assertThat(cell(0, 5)).isNotEqualTo(before);
        assertThat(looms.target().getTitle()).doesNotContain("not saved");
    }

    @Test
    void writesOnePdfOrOneForEachLoom() throws IOException {
        open(Optional.of(wave()));
        openClass();
        window.typeOver(looms, "field.member.name", "Asta");
        looms.button("tool.class-add").click();
        answers.save = Optional.of(folder.resolve("all.pdf"));
        looms.button("tool.class-pdf").click();
        waitForMessage("All sheets of the class are written to");
        try (PDDocument document = Loader.loadPDF(folder.resolve("all.pdf").toFile())) {
            // the lists, two looms and the booklet
            assertThat(document.getDocumentCatalog().getDocumentOutline().children())
                    .hasSize(4);
        }
        answers.save = Optional.of(folder.resolve("each.pdf"));
        looms.button("tool.class-pdfs").click();
        waitForMessage("4 files are written");
        assertThat(folder.resolve("each-0-lists.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("each-1-asta.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("each-2.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("each.pdf")).doesNotExist();
    }

    @Test
    void writingCanBeStoppedAndLeavesNothing() throws IOException {
        open(Optional.of(wave()));
        openClass();
        onEventThread(() -> {
            for (int i = 0; i < 30; i++) {
                session().add();
            }
            return null;
        });
        answers.save = Optional.of(folder.resolve("many.pdf"));
        looms.button("tool.class-pdf").click();
        looms.button("tool.class-pdf").requireDisabled();
        looms.button("jobStop").click();
        waitForMessage("Stopped. Nothing was written.");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(each -> each.getFileName().toString())).containsExactly("wave.json");
        }
        looms.button("tool.class-pdf").requireEnabled();
    }

    @Test
    void aClassFileOpensBesideItsPiece() throws IOException {
        wave();
        Path file = Files.writeString(folder.resolve("saturday.json"), """
                {"thrumwrightClass": 1, "title": "Saturday", "piece": "wave.json",
                 "members": [{"name": "Asta"}, {"name": "Bo", "width": "wide open"}]}
                """);
        open(Optional.empty());
        answers.open = Optional.of(file);
        window.press(KeyEvent.VK_O, KeyEvent.VK_CONTROL);
        waitFor("the refusal", () -> WindowTest.message(frame.target()).contains("members › member 2 › width"));
        Files.writeString(file, Files.readString(file).replace("wide open", "10 cm"));
        window.press(KeyEvent.VK_O, KeyEvent.VK_CONTROL);
        findClass();
        assertThat(looms.target().getTitle()).startsWith("Class: Saturday");
        assertThat(onEventThread(() -> editor.session().path()).orElseThrow()).hasFileName("wave.json");
        assertThat(cell(1, 1)).isEqualTo("Bo");
    }

    @Test
    void aMisspeltFieldOfAClassIsToldInItsWindow() throws IOException {
        wave();
        Path file = Files.writeString(folder.resolve("saturday.json"), """
                {"thrumwrightClass": 1, "title": "Saturday", "piece": "wave.json", "members": [{"nam": "Asta"}]}
                """);
        open(Optional.empty());
        answers.open = Optional.of(file);
        window.press(KeyEvent.VK_O, KeyEvent.VK_CONTROL);
        findClass();
        waitForMessage("“nam”");
        assertThat(message()).contains("member 1").contains("“name”");
    }

    @Test
    void aClassOfAnOpenPieceFollowsItAsItIsThere() throws IOException {
        Path piece = wave();
        Path file = Files.writeString(folder.resolve("saturday.json"), """
                {"thrumwrightClass": 1, "title": "Saturday", "piece": "wave.json", "members": [{"name": "Asta"}]}
                """);
        open(Optional.of(piece));
        onEventThread(() -> {
            editor.session()
                    .edit(editor.desk()
                            .edits()
                            .field(
                                    "Width",
                                    "warp",
                                    old -> old.withWarp(old.warp().withWidth(Length.parse("9 cm")))));
            editor.files().open(file);
            return null;
        });
        findClass();
        assertThat(onEventThread(() -> room.windows().size())).isEqualTo(1);
        assertThat(cell(0, 3)).isEqualTo("9 cm");
        assertThat(looms.target().getTitle()).startsWith("Class: Saturday —");
    }

    @Test
    void aClassThatIsNotSavedIsAskedAboutBeforeItsPieceCloses() throws IOException {
        open(Optional.of(wave()));
        openClass();
        window.typeOver(looms, "field.member.name", "Asta");
        window.press(KeyEvent.VK_W, KeyEvent.VK_CONTROL);
        waitFor("the class put away", () -> !looms.target().isShowing());
        onEventThread(() -> {
            editor.files().close();
            return null;
        });
        assertThat(frame.target().isShowing()).isTrue();
        assertThat(answers.asked).isEqualTo(1);
        answers.closing = Questions.Closing.LEAVE;
        onEventThread(() -> {
            editor.files().close();
            return null;
        });
        waitFor("the window closed", () -> !frame.target().isShowing());
    }
}
