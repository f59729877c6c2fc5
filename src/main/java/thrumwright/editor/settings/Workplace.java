package thrumwright.editor.settings;

import com.formdev.flatlaf.FlatLaf;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import thrumwright.drawing.Fonts;
import thrumwright.editor.library.Library;
import thrumwright.editor.look.FocusInSight;
import thrumwright.editor.look.PlainTextUI;
import thrumwright.editor.look.Theme;
import thrumwright.editor.text.Texts;
import thrumwright.store.UserFolder;
import thrumwright.store.keeping.Keeping;

/** What all windows share: settings, structures, texts, letters and the look, which somebody may change. */
public final class Workplace {
    private static final String THEME = "theme";
    private static final String SYSTEM = "SYSTEM";

    private final Settings settings;
    private final Library library;
    private final Texts texts;
    private final Keeping keeping;
    private final Cupboard cupboard;
    private final String version;
    private final Fonts fonts = Fonts.keptIn(UserFolder.fonts());
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Theme theme;

    /**
     * @param locale the language wanted; where there is no text in it, English
     * @param keeping by which what is open is kept
     * @param version of the program, such as {@code 0.1.0}
     */
    public Workplace(Settings settings, Library library, Locale locale, Keeping keeping, String version) {
        this.settings = settings;
        this.texts = Texts.of(locale);
        this.library = library;
        this.keeping = keeping;
        this.cupboard = new Cupboard(Optional.of(settings.folder())
                .filter(folder -> !folder.isEmpty())
                .map(Path::of));
        this.version = version;
        this.theme = followsSystem() ? Theme.ofSystem() : chosen();
        theme.apply(fonts);
        FocusInSight.ALWAYS.install();
        for (String ui : List.of("ScrollBarUI", "SplitPaneUI", "ToolBarUI", "MenuBarUI")) {
            PlainTextUI.call(ui, texts.say("heard." + ui));
        }
    }

    /** Light, until somebody chooses. */
    private Theme chosen() {
        return Stream.of(Theme.values())
                .filter(known ->
                        settings.get(THEME).filter(known.name()::equals).isPresent())
                .findFirst()
                .orElse(Theme.LIGHT);
    }

    /** Whether the look is to be light or dark as the system is. */
    public boolean followsSystem() {
        return settings.get(THEME).filter(SYSTEM::equals).isPresent();
    }

    /** Who has never chosen gets what the system has. */
    public static void followSystemAtFirst(Settings settings) {
        if (settings.get(THEME).isEmpty()) {
            settings.put(THEME, SYSTEM);
        }
    }

    /** From now on, at every start. */
    public void followSystem() {
        setTheme(Theme.ofSystem());
        settings.put(THEME, SYSTEM);
    }

    public Settings settings() {
        return settings;
    }

    /** Looms and yarns from piece to piece. */
    public Cupboard cupboard() {
        return cupboard;
    }

    public Keeping keeping() {
        return keeping;
    }

    public String version() {
        return version;
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
        settings.put(THEME, other.name());
        theme.apply(fonts);
        FlatLaf.updateUI();
        listeners.forEach(Runnable::run);
    }

    /**
     * Tells whoever listens that the look is another.
     *
     * @return takes the listener away again
     */
    public Runnable whenLookChanges(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }
}
