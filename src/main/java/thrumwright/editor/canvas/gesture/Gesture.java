package thrumwright.editor.canvas.gesture;

import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import thrumwright.editor.canvas.painted.Showing;

/** Something done with the mouse from press to release. It tries things out first; only the release makes them so. */
public interface Gesture {
    void drag(MouseEvent event);

    void release(MouseEvent event);

    /** Everything as it was before. */
    void cancel();

    /** What to show while it is under way. */
    default void paint(Graphics2D g, Showing showing) {}
}
