package thrumwright.editor.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.GraphicsEnvironment;
import java.util.function.Supplier;
import javax.swing.UIDefaults;
import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;
import javax.swing.plaf.FontUIResource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;

/** The themes to choose from. */
public enum Theme {
    LIGHT(FlatLightLaf::new, Palette.onLightScreen()),
    DARK(FlatDarkLaf::new, Palette.onDarkScreen()),
    HIGH_CONTRAST(
            HighContrastLaf::new,
            new Palette(Color.BLACK, Color.WHITE, new Color(0xe0e0e0), new Color(0xffe14d), new Color(0x9a9a9a), true));

    private static final String FOLDER = "thrumwright.editor.themes";
    private static final int SIZE = 14;
    /** The property by which FlatLaf knows the size of type that is drawn at its usual size. */
    private static final String USUAL_SIZE = "flatlaf.uiScale.fontSizeDivider";

    private static final String NAMED = "Thrumwright.fontsNamed";

    private final Supplier<FlatLaf> look;
    private final Palette palette;

    Theme(Supplier<FlatLaf> look, Palette palette) {
        this.look = look;
        this.palette = palette;
    }

    /** Dark where the system is. */
    public static Theme ofSystem() {
        return SystemLook.of(System.getProperty("os.name")).theme();
    }

    /** The colours of drawings on the canvas. */
    public Palette palette() {
        return palette;
    }

    /**
     * So that texts with marks in them find the program's fonts by their names. Only when there is such a text, since Java then looks at
     * all fonts that the system has.
     */
    public static void nameFonts() {
        UIManager.get(NAMED);
    }

    private static Object register(Fonts fonts) {
        GraphicsEnvironment environment = GraphicsEnvironment.getLocalGraphicsEnvironment();
        fonts.all().forEach(environment::registerFont);
        return true;
    }

    /** Gives all windows this look, with the program's own font. */
    public void apply(Fonts fonts) {
        FlatLaf.registerCustomDefaultsSource(FOLDER);
        FlatLaf.setUseNativeWindowDecorations(false);
        try {
            UIManager.setLookAndFeel(look.get());
        } catch (UnsupportedLookAndFeelException e) {
            throw new IllegalStateException("FlatLaf works on every system", e);
        }
        PlainTextUI.install();
        setType(fonts, UIScale.getUserScaleFactor());
        FlatLaf.updateUI();
    }

    /**
     * The program's own type, as much larger than usual as the look draws all else: by the
     * system's own type, or as the user asks by {@code -Dflatlaf.uiScale}.
     */
    private static void setType(Fonts fonts, float larger) {
        // From now on the look goes by our type, which is to come to the same.
        System.setProperty(USUAL_SIZE, String.valueOf(SIZE));
        float size = SIZE * larger;
        UIManager.put("h3.font", new FontUIResource(fonts.semibold().deriveFont(size + 1.5f * larger)));
        UIManager.put("semibold.font", new FontUIResource(fonts.semibold().deriveFont(size)));
        UIManager.put(NAMED, (UIDefaults.LazyValue) any -> register(fonts));
        UIManager.put("defaultFont", new FontUIResource(fonts.regular().deriveFont(size)));
    }
}
