package thrumwright.editor.look;

import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** Lines and letters without steps, from now on, on whatever is drawn with. */
public final class Smooth {
    private Smooth() {}

    public static Graphics2D lines(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        return g;
    }

    public static Graphics2D letters(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        return g;
    }

    public static Graphics2D both(Graphics2D g) {
        return letters(lines(g));
    }
}
