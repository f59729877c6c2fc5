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
import thrumwright.editor.text.Texts;
import thrumwright.store.BuiltIn;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;

/** All windows that are open, and what they share. */
final class Workroom {
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

    Settings settings() {
        return settings;
    }

    Texts texts() {
        return texts;
    }

    Fonts fonts() {
        return fonts;
    }

    Theme theme() {
        return theme;
    }

    Library library() {
        return library;
    }

    void setTheme(Theme other) {
        theme = other;
        settings.put("theme", other.name());
        theme.apply(fonts);
        FlatLaf.updateUI();
        windows.forEach(EditorWindow::themeChanged);
    }

    /** A window for a file; for none, the demo piece, which is nowhere on file. */
    EditorWindow open(Optional<Path> file) throws FileProblem {
        if (file.isEmpty()) {
            return open(new Session(demo(), Optional.empty()));
        }
        String text = SafeFile.read(file.get());
        if (ClassFile.isClass(text)) {
            return openClass(ClassFile.read(text, ClassFile.sourceFor(file.get())), file.get());
        }
        PieceFile read = PieceFile.read(text);
        settings.used(file.get());
        return open(new Session(read, file));
    }

    /** The window of a class's piece; that of the class comes up beside it. */
    private EditorWindow openClass(ClassFile file, Path path) {
        settings.used(path);
        EditorWindow window = open(new Session(file.piece(), file.piecePath(path)));
        EventQueue.invokeLater(() -> window.openClass(file, path));
        return window;
    }

    private static PieceFile demo() throws FileProblem {
        return PieceFile.read(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)));
    }

    EditorWindow open(Session session) {
        EditorWindow window = new EditorWindow(this, session);
        windows.add(window);
        return window;
    }

    void closed(EditorWindow window) {
        windows.remove(window);
    }

    /** The window in which a file is open already. */
    Optional<EditorWindow> showing(Path path) {
        Path whole = path.toAbsolutePath();
        return windows.stream()
                .filter(window -> window.session()
                        .path()
                        .filter(open -> open.toAbsolutePath().equals(whole))
                        .isPresent())
                .findFirst();
    }

    List<EditorWindow> windows() {
        return List.copyOf(windows);
    }
}
