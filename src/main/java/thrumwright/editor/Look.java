package thrumwright.editor;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;

/** How the windows look. */
enum Look {
    LIGHT,
    DARK;

    private static final float SIZE = 14f;

    /** Makes this the look of all windows. */
    void use(Fonts fonts) {
        for (Font font : fonts.files().keySet()) {
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
        }
        UIManager.put(
                "defaultFont",
                new javax.swing.plaf.FontUIResource(fonts.regular().deriveFont(SIZE)));
        FlatLaf.setup(this == DARK ? new FlatDarkLaf() : new FlatLightLaf());
        for (Window window : Window.getWindows()) {
            SwingUtilities.updateComponentTreeUI(window);
        }
    }

    Palette palette() {
        return this == DARK ? Palette.onDarkScreen() : Palette.onLightScreen();
    }
}
