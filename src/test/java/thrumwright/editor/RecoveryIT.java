package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.files.Questions.Closing;
import thrumwright.editor.files.Questions.Recovering;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.ClassMember;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.store.keeping.Keeper;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.WindowTest;

/** What wasn't saved when the program ended is offered beside what is saved, and neither is lost. */
class RecoveryIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path home;

    private final Answers answers = new Answers();
    private Keeper keeper;
    private Path state;
    private EditorWindow editor;
    private Workroom room;
    private int starts;

    private void start(Optional<Path> file) {
        state = home.resolve("state-" + starts++);
        keeper = Keeper.in(state);
        open(file);
    }

    private void open(Optional<Path> file) {
        onEventThread(() -> {
            room = new Workroom(
                    new Settings(Optional.empty()),
                    Rooms.LIBRARY,
                    Locale.UK,
                    new Keeping(keeper, Optional.empty(), Optional.empty()));
            editor = room.open(file);
            editor.files().setQuestions(answers);
            editor.show();
            return null;
        });
    }

    /** As after a new start, when the program before was killed just now. */
    private void startAfterKill(Recovering answer) throws Exception {
        keeper.flush();
        Path left = home.resolve("state-" + starts++);
        Files.createDirectories(left);
        Files.createDirectories(state);
        try (Stream<Path> files = Files.list(state)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".journal")).toList()) {
                Files.copy(file, left.resolve(file.getFileName()));
            }
        }
        state = left;
        keeper = Keeper.in(state);
        open(Optional.empty());
        answers.recovering = answer;
        onEventThread(() -> {
            editor.recover();
            return null;
        });
    }

    private void edit(String title) {
        onEventThread(() -> {
            editor.session().edit(Edit.of("Title", piece -> piece.withTitle(title)));
            return null;
        });
    }

    private Path file() throws Exception {
        return Files.writeString(home.resolve("saltmarsh.json"), BuiltIn.DEMO.text("saltmarsh-panel.json"));
    }

    private List<String> titles() {
        return onEventThread(() -> room.windows().stream()
                .map(each -> each.session().piece().title())
                .toList());
    }

    private int left() throws Exception {
        keeper.flush();
        return keeper.left().size();
    }

    @Test
    void anUntitledPieceComesBack() throws Exception {
        start(Optional.empty());
        edit("Sea lavender");

        startAfterKill(Recovering.UNSAVED);

        assertThat(titles()).containsExactly("Sea lavender");
        assertThat(answers.questions).singleElement().asString().contains("“Sea lavender”", "nowhere on file");
        assertThat(onEventThread(() -> editor.session().dirty())).isTrue();
        assertThat(left()).as("kept by the window now").isZero();

        startAfterKill(Recovering.UNSAVED);

        assertThat(titles()).as("after one more kill").containsExactly("Sea lavender");
    }

    @Test
    void whatWasSavedIsAStepBackFromWhatWasNot() throws Exception {
        Path file = file();
        String before = Files.readString(file);
        String title = PieceFile.read(before).piece().title();
        start(Optional.of(file));
        edit("Sea lavender");

        startAfterKill(Recovering.UNSAVED);

        assertThat(answers.questions).singleElement().asString().contains(file.toString(), "the title");
        assertThat(titles()).containsExactly("Sea lavender");
        assertThat(Files.readString(file)).isEqualTo(before);
        onEventThread(() -> {
            editor.session().undo();
            return null;
        });
        assertThat(titles()).containsExactly(title);
        assertThat(onEventThread(() -> editor.session().dirty())).isFalse();
    }

    @Test
    void whatWasNotSavedIsStillThereWhenTheSavedOneIsOpened() throws Exception {
        Path file = file();
        start(Optional.of(file));
        edit("Sea lavender");

        startAfterKill(Recovering.SAVED);

        assertThat(titles())
                .containsExactly(PieceFile.read(Files.readString(file)).piece().title());
        assertThat(left()).isEqualTo(1);
        startAfterKill(Recovering.LATER);
        assertThat(left()).isEqualTo(1);
        startAfterKill(Recovering.FORGET);
        assertThat(left()).isZero();
    }

    @Test
    void savingOverAFileThatChangedMeanwhileIsAsked() throws Exception {
        Path file = file();
        start(Optional.of(file));
        edit("Sea lavender");
        keeper.flush();
        String others = Files.readString(file) + "\n\n";
        Files.writeString(file, others);

        startAfterKill(Recovering.UNSAVED);
        assertThat(answers.questions.get(0)).contains("changed since");
        int asked = answers.asked;
        onEventThread(() -> {
            editor.frame().getRootPane().getActionMap().get("save").actionPerformed(null);
            return null;
        });

        assertThat(answers.asked).isEqualTo(asked + 1);
        assertThat(Files.readString(file)).isEqualTo(others);
    }

    @Test
    void whatIsSavedOrGivenUpIsNotOffered() throws Exception {
        start(Optional.empty());
        edit("Sea lavender");
        answers.closing = Closing.LEAVE;
        onEventThread(() -> {
            editor.files().close();
            return null;
        });

        startAfterKill(Recovering.UNSAVED);

        assertThat(answers.questions).isEmpty();
    }

    @Test
    void aClassComesBack() throws Exception {
        start(Optional.empty());
        onEventThread(() -> {
            editor.classWindow().show();
            editor.classWindow().session().edit(set -> set.withMore(1, ClassMember.named("Window seat")), null);
            return null;
        });

        startAfterKill(Recovering.UNSAVED);

        assertThat(onEventThread(() -> editor.classWindow().session().set().members()))
                .extracting(ClassMember::name)
                .contains("Window seat");
        assertThat(left()).isZero();
    }
}
