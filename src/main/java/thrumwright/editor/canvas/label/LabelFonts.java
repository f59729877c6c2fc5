package thrumwright.editor.canvas.label;

import java.awt.Font;
import javax.swing.UIManager;

/**
 * The fonts of labels. The look makes them anew each time it is asked.
 *
 * @param plain for amounts, heights and cuts
 * @param strong for names
 */
public record LabelFonts(Font plain, Font strong) {
    public static LabelFonts now() {
        return new LabelFonts(UIManager.getFont("Label.font"), UIManager.getFont("semibold.font"));
    }
}
