package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import javax.swing.JButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.JobBar;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.keeping.FaultLog;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.WindowTest;

/** What nobody expected costs nothing: what isn't saved is kept, the fault is logged and told, the window goes on. */
class UnexpectedIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path home;

    private EditorWindow editor;

    private void start() {
        onEventThread(() -> {
            Keeping keeping = Keeping.in(home);
            Workroom room = new Workroom(new Settings(Optional.empty()), Rooms.LIBRARY, Locale.UK, keeping);
            Unexpected.arrivesHere(room.place().texts(), keeping.keeper(), Optional.of(new FaultLog(home)))
                    .toldIn(room);
            editor = room.open(Optional.empty());
            editor.show();
            editor.session().edit(Edit.of("Title", piece -> piece.withTitle("Sea lavender")));
            return null;
        });
    }

    private Optional<JButton> copy(Component component) {
        if (component instanceof JButton button && "messageCopy".equals(button.getName())) {
            return Optional.of(button).filter(Component::isShowing);
        }
        return component instanceof Container container
                ? Stream.of(container.getComponents())
                        .map(this::copy)
                        .flatMap(Optional::stream)
                        .findFirst()
                : Optional.empty();
    }

    private void assertToldAndKept(String kind) throws Exception {
        waitFor("the sentence", () -> onEventThread(() -> copy(editor.frame()).isPresent()));
        try (Stream<Path> journals = Files.list(home.resolve("journals"))) {
            assertThat(journals.filter(file -> file.toString().endsWith(".journal")))
                    .singleElement()
                    .satisfies(file -> assertThat(Files.readString(file)).contains("Sea lavender"));
        }
        assertThat(Files.readString(home.resolve("faults.log"))).contains(kind).doesNotContain("lavender");
        onEventThread(() -> {
            copy(editor.frame()).orElseThrow().doClick();
            return null;
        });
        assertThat((String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor))
                .contains(kind);
        onEventThread(() -> {
            editor.session().undo();
            return null;
        });
        assertThat(onEventThread(() -> editor.session().dirty()))
                .as("the window goes on")
                .isFalse();
    }

    @Test
    void onTheEventThread() throws Exception {
        start();
        EventQueue.invokeLater(() -> {
            throw new IllegalStateException("of Sea lavender");
        });
        assertToldAndKept("IllegalStateException");
    }

    @Test
    void anErrorOnAThreadOfItsOwn() throws Exception {
        start();
        new Thread(() -> {
                    throw new OutOfMemoryError("of Sea lavender");
                })
                .start();
        assertToldAndKept("OutOfMemoryError");
    }

    @Test
    void aJobThatRunsOutOfMemoryEnds() {
        start();
        AtomicReference<Exception> thrown = new AtomicReference<>();
        JobBar jobs = onEventThread(() -> {
            JobBar bar = new JobBar(editor.room().texts(), () -> {});
            bar.run(
                    "job.page",
                    progress -> {
                        throw new OutOfMemoryError("Java heap space");
                    },
                    ended -> thrown.set(ended.thrown()));
            return bar;
        });
        waitFor("the end", () -> thrown.get() != null);
        assertThat(onEventThread(jobs::busy)).isFalse();
        assertThat(thrown.get()).hasRootCauseInstanceOf(OutOfMemoryError.class);
    }
}
