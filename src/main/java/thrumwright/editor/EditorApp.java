package thrumwright.editor;

import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.library.Library;
import thrumwright.editor.look.Theme;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.FileProblem;
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
        open(room -> first(room, file), version);
    }

    /** The same with the demo piece. */
    public static void openDemo(String version) {
        open(room -> new First(demo(room), List.of(), false), version);
    }

    private static void open(Function<Workroom, First> first, String version) {
        SystemManners.before();
        Keeping keeping = Keeping.in(UserFolder.state());
        Settings settings = Settings.ofUser();
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
        Workroom room = new Workroom(settings, library);
        open(
                asked -> first(asked, file),
                room,
                Unexpected.arrivesHere(
                        room.place().texts(), room.place().keeping().keeper(), Optional.empty()));
    }

    private static void open(Function<Workroom, First> wanted, Workroom room, Unexpected unexpected) {
        unexpected.toldIn(room);
        Thread classes = ClassesAhead.begin();
        First first = wanted.apply(room);
        Theme.warmUp();
        // the window works it out again, but then knows how
        PiecePicture.of(first.work().session().plan());
        ClassesAhead.await(classes);
        EventQueue.invokeLater(() -> begin(room, first));
    }

    /** What is shown first, and what is to be said of it. */
    private record First(Workroom.ToOpen work, List<String> problems, boolean asking) {}

    /** Made by one event, filled by the next and shown by the one after, as each takes a while. */
    private static void begin(Workroom room, First first) {
        EditorWindow window = room.begin(first.work());
        new SystemManners(room).install();
        EventQueue.invokeLater(() -> {
            room.finish(window, first.work());
            if (!first.problems().isEmpty()) {
                window.problem(String.join("\n", first.problems()));
            }
            EventQueue.invokeLater(() -> {
                window.show();
                EventQueue.invokeLater(() -> {
                    window.recover();
                    // only now has it been painted
                    EventQueue.invokeLater(() -> lookThroughLibrary(room, window));
                });
                if (first.asking()) {
                    EventQueue.invokeLater(window::askFirst);
                }
            });
        });
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

    /** Where a file can't be read, the demo piece with the reason. */
    private static First first(Workroom room, Optional<Path> asked) {
        List<String> problems = new ArrayList<>();
        Optional<Path> file = asked.or(() -> last(room));
        Workroom.ToOpen work;
        try {
            work = file.isEmpty() ? Workroom.nothing() : room.read(file);
        } catch (FileProblem e) {
            String name = file.map(Path::getFileName).map(Path::toString).orElse("");
            problems.add(room.place().texts().say("message.not-opened", Map.of("file", name, "why", e.getMessage())));
            work = demo(room);
        }
        return new First(work, problems, file.isEmpty());
    }

    private static Optional<Path> last(Workroom room) {
        return room.place().settings().recent().stream()
                .filter(Files::isRegularFile)
                .findFirst();
    }

    private static Workroom.ToOpen demo(Workroom room) {
        try {
            return room.read(Optional.empty());
        } catch (FileProblem damaged) {
            throw new IllegalStateException("the demo piece is damaged", damaged);
        }
    }
}
