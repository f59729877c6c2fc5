package thrumwright.editor;

import com.formdev.flatlaf.FlatLaf;
import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.drawing.Fonts;
import thrumwright.editor.edit.Session;
import thrumwright.editor.library.Library;
import thrumwright.editor.look.Theme;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.BuiltIn;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;

/** All windows that are open, and what they share. */
public final class Workroom {
    private final Settings settings;
    private final Library library;
    private final Texts texts;
    private final Fonts fonts = Fonts.load();
    private final List<EditorWindow> windows = new ArrayList<>();
    private Theme theme;

    Workroom(Settings settings, Library library) {
        this(settings, library, Locale.UK);
    }

    /** @param locale the language wanted; where there is no text in it, English */
    Workroom(Settings settings, Library library, Locale locale) {
        this.settings = settings;
        this.texts = Texts.of(locale);
        this.library = library;
        this.theme = settings.get("theme").flatMap(Workroom::named).orElse(Theme.LIGHT);
        theme.apply(fonts);
    }

    private static Optional<Theme> named(String name) {
        for (Theme known : Theme.values()) {
            if (known.name().equals(name)) {
                return Optional.of(known);
            }
        }
        return Optional.empty();
    }

    public Settings settings() {
        return settings;
    }

    public Texts texts() {
        return texts;
    }

    public Fonts fonts() {
        return fonts;
    }

    public Theme theme() {
        return theme;
    }

    public Library library() {
        return library;
    }

    public void setTheme(Theme other) {
        theme = other;
        settings.put("theme", other.name());
        theme.apply(fonts);
        FlatLaf.updateUI();
        windows.forEach(EditorWindow::themeChanged);
    }

    /** A window for a file; for none, the demo piece, which is nowhere on file. */
    public EditorWindow open(Optional<Path> file) throws FileProblem {
        return open(read(file));
    }

    /**
     * What is to be opened, read and planned.
     *
     * @param file a class that weaves the piece, and where it is
     */
    public record Work(Session session, Optional<ClassFile> file, Optional<Path> path) {
        public Work {
            session.plan();
        }
    }

    /** As {@link #open(Optional)}, but without the window: what takes no component may be done beside the event thread. */
    public Work read(Optional<Path> file) throws FileProblem {
        if (file.isEmpty()) {
            return new Work(new Session(demo(), file), Optional.empty(), file);
        }
        Path path = file.get();
        String text = SafeFile.read(path);
        Work read = ClassFile.isClass(text)
                ? ofClass(ClassFile.read(text, ClassFile.sourceFor(path)), path)
                : new Work(new Session(PieceFile.read(text), file), Optional.empty(), file);
        settings.used(path);
        return read;
    }

    private static Work ofClass(ClassFile file, Path path) {
        return new Work(new Session(file.piece(), file.piecePath(path)), Optional.of(file), Optional.of(path));
    }

    private EditorWindow open(Work work) {
        EditorWindow window = begin(work);
        finish(window, work);
        return window;
    }

    /** The window of a piece, still to be finished. */
    EditorWindow begin(Work work) {
        EditorWindow window = new EditorWindow(this, work.session());
        windows.add(window);
        return window;
    }

    /** Fills a window; that of the piece's class, if it has one, comes up beside it. */
    void finish(EditorWindow window, Work work) {
        window.build();
        work.file()
                .ifPresent(file -> EventQueue.invokeLater(
                        () -> window.openClass(file, work.path().orElseThrow())));
    }

    private static PieceFile demo() throws FileProblem {
        return PieceFile.read(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)));
    }

    public EditorWindow open(Session session) {
        return open(new Work(session, Optional.empty(), Optional.empty()));
    }

    /** Closes one window after the other, as far as nobody wants to stay with what isn't saved. */
    public void closeAll() {
        for (EditorWindow window : windows()) {
            window.takeOver();
            window.files().close();
            if (windows.contains(window)) {
                return;
            }
        }
    }

    public void closed(EditorWindow window) {
        windows.remove(window);
    }

    /** The window in which a file is open already. */
    public Optional<EditorWindow> showing(Path path) {
        Path whole = path.toAbsolutePath();
        return windows.stream()
                .filter(window -> window.session()
                        .path()
                        .filter(open -> open.toAbsolutePath().equals(whole))
                        .isPresent())
                .findFirst();
    }

    public List<EditorWindow> windows() {
        return List.copyOf(windows);
    }
}
