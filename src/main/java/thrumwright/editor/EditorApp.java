package thrumwright.editor;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import thrumwright.editor.library.Library;
import thrumwright.store.FileProblem;
import thrumwright.store.UserFolder;

/** Opens the window. */
public final class EditorApp {
    private EditorApp() {}

    /** Opens a piece in a window of its own; without a file the demo piece. Returns at once. */
    public static void open(Optional<Path> file) {
        EventQueue.invokeLater(() -> begin(file));
    }

    private static void begin(Optional<Path> file) {
        Library library = Library.of(UserFolder.structures());
        Workroom room = new Workroom(Settings.ofUser(), library);
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, thrown) -> EventQueue.invokeLater(() -> sayWrong(room, thrown)));
        EditorWindow window = first(room, file);
        library.problems().stream().findFirst().ifPresent(window::problem);
        window.show();
    }

    private static EditorWindow first(Workroom room, Optional<Path> file) {
        try {
            return room.open(file);
        } catch (FileProblem e) {
            try {
                EditorWindow demo = room.open(Optional.empty());
                demo.problem(e.getMessage());
                return demo;
            } catch (FileProblem damaged) {
                throw new IllegalStateException("the demo piece is damaged", damaged);
            }
        }
    }

    private static void sayWrong(Workroom room, Throwable thrown) {
        String what = String.valueOf(thrown.getMessage());
        room.windows().forEach(window -> window.problem(room.texts().say("message.inside", Map.of("what", what))));
    }
}
