package thrumwright.editor.canvas.painted;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import javax.swing.UIManager;

/** A frame round all that is seen, while keys go to the canvas. */
final class FocusFrame {
    private static final int THICK = 2;

    private FocusFrame() {}

    static void paint(Graphics2D g, Showing showing) {
        if (showing.focused()) {
            Rectangle seen = new Rectangle(showing.seen());
            seen.grow(-THICK / 2, -THICK / 2);
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            LongLines.draw(g, seen, THICK);
        }
    }
}
