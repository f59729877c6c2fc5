package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.WindowEvent;
import java.awt.event.WindowListener;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.WindowTest;

/** Two people, windows or programs at one file: nobody's work is lost without a question. */
class TwoAtOnceIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path home;

    private final Answers answers = new Answers();
    private Path file;
    private String before;

    @BeforeEach
    void file() throws Exception {
        before = BuiltIn.DEMO.text("saltmarsh-panel.json");
        file = Files.writeString(home.resolve("saltmarsh.json"), before);
    }

    /** As another program would. */
    private EditorWindow start() {
        EditorWindow editor = onEventThread(() -> {
            Workroom room = new Workroom(
                    new Settings(Optional.empty()), Rooms.LIBRARY, Locale.UK, Keeping.in(home.resolve("state")));
            EditorWindow opened = room.open(Optional.of(file));
            opened.files().setQuestions(answers);
            opened.show();
            return opened;
        });
        onEventThread(() -> null);
        return editor;
    }

    private static void edit(EditorWindow editor, String title) {
        onEventThread(() -> {
            editor.session().edit(Edit.of("Title", piece -> piece.withTitle(title)));
            return null;
        });
    }

    private static void save(EditorWindow editor) {
        onEventThread(() -> {
            editor.frame().getRootPane().getActionMap().get("save").actionPerformed(null);
            return null;
        });
    }

    private String title(Path of) throws Exception {
        return PieceFile.read(Files.readString(of)).piece().title();
    }

    private static String said(EditorWindow editor) {
        return onEventThread(() -> String.join(" ", texts(editor.frame())));
    }

    private static List<String> texts(Component component) {
        List<String> found = new ArrayList<>();
        if (component instanceof JTextComponent text && text.isShowing()) {
            found.add(text.getText());
        } else if (component instanceof javax.swing.JLabel label && label.isShowing()) {
            found.add(String.valueOf(label.getText()));
        }
        if (component instanceof Container container) {
            for (Component inner : container.getComponents()) {
                found.addAll(texts(inner));
            }
        }
        return found;
    }

    @Test
    void theSecondIsToldAndSavesACopy() throws Exception {
        EditorWindow first = start();
        EditorWindow second = start();
        assertThat(said(first)).doesNotContain("open in another");
        assertThat(said(second)).contains("open in another window or program");
        Path copy = home.resolve("copy.json");
        answers.save = Optional.of(copy);

        edit(second, "Second");
        save(second);
        edit(first, "First");
        save(first);

        assertThat(title(file)).isEqualTo("First");
        assertThat(title(copy)).isEqualTo("Second");
    }

    @Test
    void theSecondCantSaveOverTheFirst() throws Exception {
        start();
        EditorWindow second = start();
        answers.save = Optional.of(file);
        edit(second, "Second");
        save(second);
        assertThat(Files.readString(file)).isEqualTo(before);
        assertThat(onEventThread(() -> second.session().dirty())).isTrue();
    }

    @Test
    void whenTheFirstIsClosedTheSecondMaySave() throws Exception {
        EditorWindow first = start();
        EditorWindow second = start();
        onEventThread(() -> {
            first.files().close();
            return null;
        });
        edit(second, "Second");
        save(second);
        assertThat(title(file)).isEqualTo("Second");
    }

    @Test
    void theVersionBeforeIsKept() throws Exception {
        EditorWindow editor = start();
        edit(editor, "Second");
        save(editor);
        try (var kept = Files.list(home.resolve("state").resolve("earlier"))) {
            assertThat(kept.toList())
                    .singleElement()
                    .satisfies(earlier -> assertThat(earlier).hasContent(before));
        }
    }

    @Test
    void theVersionBeforeIsOneStepAway() throws Exception {
        EditorWindow editor = start();
        Action earlier = editor.frame().getRootPane().getActionMap().get("earlier");
        assertThat(onEventThread(earlier::isEnabled)).isFalse();
        String first = title(file);
        edit(editor, "Second");
        save(editor);
        assertThat(onEventThread(earlier::isEnabled)).isTrue();
        onEventThread(() -> {
            earlier.actionPerformed(null);
            return null;
        });
        assertThat(editor.session().piece().title()).isEqualTo(first);
        assertThat(said(editor)).contains("as it was before it was last saved");
        assertThat(title(file)).isEqualTo("Second");
        onEventThread(() -> {
            editor.frame().getRootPane().getActionMap().get("undo").actionPerformed(null);
            return null;
        });
        assertThat(editor.session().piece().title()).isEqualTo("Second");
    }

    @Test
    void theVersionBeforeOfAClassIsOneStepAwayToo() throws Exception {
        EditorWindow editor = start();
        Path group = Files.writeString(
                home.resolve("group.json"),
                "{\"thrumwrightClass\":1,\"title\":\"Saturday\",\"piece\":\"saltmarsh.json\","
                        + "\"members\":[{\"name\":\"Asta\"},{\"name\":\"Bo\"}]}");
        onEventThread(() -> {
            editor.open(group);
            return null;
        });
        ClassSession session = onEventThread(() -> editor.classWindow().session());
        Action earlier = ofClass(editor, "class-earlier");
        assertThat(onEventThread(earlier::isEnabled)).isFalse();
        onEventThread(() -> {
            session.edit(set -> set.withTitle("Sunday").without(0), null);
            ofClass(editor, "class-save").actionPerformed(null);
            return null;
        });
        assertThat(Files.readString(group)).contains("Sunday").doesNotContain("Asta");
        assertThat(onEventThread(earlier::isEnabled)).isTrue();
        onEventThread(() -> {
            earlier.actionPerformed(null);
            return null;
        });
        assertThat(session.set().title()).isEqualTo("Saturday");
        assertThat(session.set().members()).hasSize(2);
        assertThat(Files.readString(group)).contains("Sunday");
        onEventThread(() -> {
            ofClass(editor, "class-undo").actionPerformed(null);
            return null;
        });
        assertThat(session.set().title()).isEqualTo("Sunday");
    }

    private static Action ofClass(EditorWindow editor, String command) {
        return onEventThread(
                () -> editor.classWindow().frame().getRootPane().getActionMap().get(command));
    }

    @Test
    void anotherNameOfTheFileIsTold() throws Exception {
        EditorWindow editor = start();
        Path other = Files.createLink(home.resolve("other.json"), file);
        edit(editor, "Mine");
        save(editor);
        assertThat(said(editor)).contains("Saved").contains("hard links");
        assertThat(other).hasContent(before);
    }

    @Test
    void whatWasReplacedMeanwhileIsNotOverwrittenUnasked() throws Exception {
        EditorWindow editor = start();
        String others = before + "\n";
        var time = Files.getLastModifiedTime(file);
        Files.writeString(file, others);
        Files.setLastModifiedTime(file, time);
        edit(editor, "Mine");
        save(editor);
        assertThat(answers.asked).isEqualTo(1);
        assertThat(Files.readString(file)).isEqualTo(others);
    }

    /** What was read is what counts, however long the window takes. */
    @Test
    void whatWasReplacedWhileTheWindowOpenedIsNotOverwrittenUnasked() throws Exception {
        String others = before + "\n";
        EditorWindow editor = onEventThread(() -> {
            Workroom room = new Workroom(new Settings(Optional.empty()), Rooms.LIBRARY, Locale.UK, Keeping.nowhere());
            Workroom.ToOpen read = room.read(Optional.of(file));
            Files.writeString(file, others);
            EditorWindow opened = room.begin(read);
            room.finish(opened, read);
            opened.files().setQuestions(answers);
            return opened;
        });
        edit(editor, "Mine");
        save(editor);
        assertThat(answers.asked).isEqualTo(1);
        assertThat(Files.readString(file)).isEqualTo(others);
    }

    @Test
    void comingBackTellsWhatBecameOfTheFile() throws Exception {
        EditorWindow editor = start();
        Files.writeString(file, before + "\n");
        comeBack(editor);
        assertThat(said(editor)).contains("changed by somebody else");
        Files.delete(file);
        comeBack(editor);
        assertThat(said(editor)).contains("no longer there");
    }

    private static void comeBack(EditorWindow editor) {
        onEventThread(() -> {
            WindowEvent event = new WindowEvent(editor.frame(), WindowEvent.WINDOW_ACTIVATED);
            for (WindowListener each : editor.frame().getWindowListeners()) {
                each.windowActivated(event);
            }
            return null;
        });
    }
}
