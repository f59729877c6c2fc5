package thrumwright.editor.loom;

import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JComponent;
import thrumwright.drawing.Palette;
import thrumwright.editor.look.Smooth;

/** What the views at the loom are drawn on. */
final class LoomPaper {
    private LoomPaper() {}

    /** Covers a component with paper, on which lines and letters are smooth; whoever draws on it disposes of it. */
    static Graphics2D cover(JComponent component, Graphics g, Palette palette) {
        Graphics2D page = (Graphics2D) g.create();
        Smooth.both(page);
        page.setColor(palette.paper());
        page.fillRect(0, 0, component.getWidth(), component.getHeight());
        return page;
    }
}
