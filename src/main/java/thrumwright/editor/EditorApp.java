package thrumwright.editor;

import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.editor.library.Library;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.UserFolder;
import thrumwright.store.keeping.FaultLog;
import thrumwright.store.keeping.Keeping;

/** Opens the window. */
public final class EditorApp {
    private EditorApp() {}

    /**
     * Opens a piece in a window of its own; without a file the piece that was open last, and if there was none yet, it is
     * asked what to begin with. Returns when all is ready that takes no
     * component: until there is one, the look, the fonts, the piece and its plan need not keep the event thread busy.
     *
     * @param version of the program, such as {@code 0.1.0}
     */
    public static void open(Optional<Path> file, String version) {
        SystemManners.before();
        Settings settings = Settings.ofUser();
        open(FirstPiece.of(file.or(() -> last(settings))), settings, version);
    }

    /** The same with the demo piece. */
    public static void openDemo(String version) {
        SystemManners.before();
        open(FirstPiece.demo(), Settings.ofUser(), version);
    }

    private static void open(FirstPiece first, Settings settings, String version) {
        Keeping keeping = Keeping.in(UserFolder.state());
        Workplace.followSystemAtFirst(settings);
        Runtime.getRuntime().addShutdownHook(new Thread(keeping.keeper()::flush, "last moment"));
        Unexpected unexpected = Unexpected.arrivesHere(
                Texts.of(Locale.UK), keeping.keeper(), Optional.of(new FaultLog(UserFolder.state())));
        open(
                first,
                new Workroom(settings, Library.of(UserFolder.structures()), Locale.UK, keeping, version),
                unexpected);
    }

    /** The same with what somebody else likes and has. */
    static void open(Optional<Path> file, Settings settings, Library library) {
        FirstPiece first = FirstPiece.of(file.or(() -> last(settings)));
        Workroom room = new Workroom(settings, library);
        open(
                first,
                room,
                Unexpected.arrivesHere(
                        room.place().texts(), room.place().keeping().keeper(), Optional.empty()));
    }

    private static void open(FirstPiece wanted, Workroom room, Unexpected unexpected) {
        unexpected.toldIn(room);
        FirstPiece.First first = wanted.in(room);
        new Opening(room, first.work(), window -> whole(room, window, first)).begin();
    }

    private static void whole(Workroom room, EditorWindow window, FirstPiece.First first) {
        new SystemManners(room).install();
        room.openClass(window, first.work());
        if (!first.problems().isEmpty()) {
            window.problem(String.join("\n", first.problems()));
        }
        window.recover();
        if (first.asking()) {
            EventQueue.invokeLater(window::askFirst);
        }
        lookThroughLibrary(room, window);
    }

    /** There is no hurry: nobody needs the structures before asking for them. */
    private static void lookThroughLibrary(Workroom room, EditorWindow window) {
        Thread thread = new Thread(
                () -> {
                    List<String> problems = room.place().library().problems();
                    if (!problems.isEmpty()) {
                        EventQueue.invokeLater(() -> window.problem(String.join("\n", problems)));
                    }
                },
                "library");
        thread.setDaemon(true);
        thread.start();
    }

    private static Optional<Path> last(Settings settings) {
        return settings.recent().stream().filter(Files::isRegularFile).findFirst();
    }
}
