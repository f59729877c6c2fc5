package thrumwright.editor;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFrame;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.ReadClass;
import thrumwright.editor.library.Library;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.window.HelpDesk;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.editor.window.piece.OtherWindows;
import thrumwright.editor.window.piece.PieceWindow;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.Unknown;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Keeping;

/** All windows of pieces that are open. */
final class Workroom implements OtherWindows {
    private final Workplace place;
    private final List<EditorWindow> windows = new ArrayList<>();
    private final HelpDesk help;

    /** A room in which nothing is kept but what is saved. */
    Workroom(Settings settings, Library library) {
        this(settings, library, Locale.UK, Keeping.nowhere(), "");
    }

    /** @param locale the language wanted; where there is no text in it, English */
    Workroom(Settings settings, Library library, Locale locale, Keeping keeping) {
        this(settings, library, locale, keeping, "");
    }

    /** The same of a program that has a version. */
    Workroom(Settings settings, Library library, Locale locale, Keeping keeping, String version) {
        this.place = new Workplace(settings, library, locale, keeping, version);
        this.help = new HelpDesk(place);
    }

    /** What all windows share. */
    Workplace place() {
        return place;
    }

    /** A window for a file; for none, the demo piece, which is nowhere on file. */
    EditorWindow open(Optional<Path> file) throws FileProblem {
        return open(read(file));
    }

    /**
     * What is to be opened, read, planned and laid out.
     *
     * @param picture of the session's plan
     * @param file a class that weaves the piece, and where it is
     */
    record ToOpen(Session session, PiecePicture picture, Optional<ReadClass> file, Optional<Path> path) {
        ToOpen(Session session, Optional<ReadClass> file, Optional<Path> path) {
            this(session, PiecePicture.close(session.plan()), file, path);
        }
    }

    /** As {@link #open(Optional)}, but without the window: what takes no component may be done beside the event thread. */
    ToOpen read(Optional<Path> file) throws FileProblem {
        ToOpen read = file.isEmpty() ? demo() : read(file.get());
        file.ifPresent(place.settings()::used);
        return read;
    }

    /** The same of a file; needs no room yet. */
    static ToOpen read(Path path) throws FileProblem {
        String text = SafeFile.read(path);
        return FileSort.of(text) == FileSort.CLASS
                ? ofClass(ReadClass.of(text, path), path)
                : new ToOpen(
                        begun(PieceFile.read(text), Optional.of(path), Optional.of(Fingerprint.of(text))),
                        Optional.empty(),
                        Optional.of(path));
    }

    /** The demo piece, which is nowhere on file. */
    static ToOpen demo() throws FileProblem {
        PieceFile demo = PieceFile.read(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)));
        return new ToOpen(new Session(demo, Optional.empty()), Optional.empty(), Optional.empty());
    }

    /** A piece without anything, until somebody says what to begin with. */
    static ToOpen nothing() {
        PieceFile empty = new PieceFile(Beginnings.empty(UnitSystem.METRIC), Unknown.none());
        return new ToOpen(new Session(empty, Optional.empty()), Optional.empty(), Optional.empty());
    }

    private static ToOpen ofClass(ReadClass read, Path path) {
        Session session = begun(read.file().piece(), read.file().piecePath(path), read.pieceHeld());
        return new ToOpen(session, Optional.of(read), Optional.of(path));
    }

    private static Session begun(PieceFile file, Optional<Path> path, Optional<Fingerprint> held) {
        Session session = new Session(file, path);
        session.setBase(held);
        return session;
    }

    private EditorWindow open(ToOpen work) {
        EditorWindow window = begin(work);
        finish(window, work);
        return window;
    }

    /** The window of a piece, still to be finished. */
    EditorWindow begin(ToOpen work) {
        return begin(work, new JFrame(), canvas(work));
    }

    /** What shows the piece in its window. */
    PieceCanvas canvas(ToOpen work) {
        return new PieceCanvas(
                work.session(), work.picture(), place.texts(), place.theme().palette());
    }

    /** @param frame bare as yet */
    EditorWindow begin(ToOpen work, JFrame frame, PieceCanvas canvas) {
        EditorWindow window = new EditorWindow(place, this, work.session(), frame, canvas);
        windows.add(window);
        return window;
    }

    /** Fills a window; that of the piece's class, if it has one, comes up beside it. */
    void finish(EditorWindow window, ToOpen work) {
        window.build();
        openClass(window, work);
    }

    /** The window of the piece's class, if it has one, comes up beside its own. */
    void openClass(EditorWindow window, ToOpen work) {
        work.file()
                .ifPresent(read -> EventQueue.invokeLater(
                        () -> window.openClass(read.file(), work.path().orElseThrow(), read.held())));
    }

    @Override
    public EditorWindow open(Session session) {
        return open(new ToOpen(session, Optional.empty(), Optional.empty()));
    }

    @Override
    public void closeAll() {
        for (EditorWindow window : windows()) {
            window.takeOver();
            window.files().close();
            if (windows.contains(window)) {
                return;
            }
        }
    }

    @Override
    public void closed(PieceWindow window) {
        windows.removeIf(each -> each == window);
    }

    @Override
    public Optional<PieceWindow> showing(Path path) {
        Path whole = path.toAbsolutePath();
        return windows.stream()
                .filter(window -> window.session()
                        .path()
                        .filter(open -> open.toAbsolutePath().equals(whole))
                        .isPresent())
                .findFirst()
                .map(PieceWindow.class::cast);
    }

    @Override
    public HelpDesk help() {
        return help;
    }

    @Override
    public int count() {
        return windows.size();
    }

    List<EditorWindow> windows() {
        return List.copyOf(windows);
    }
}
