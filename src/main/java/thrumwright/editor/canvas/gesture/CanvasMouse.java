package thrumwright.editor.canvas.gesture;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;

/** The mouse on the canvas. */
public final class CanvasMouse extends MouseAdapter {
    private final Surface canvas;
    private final Tracker tracker;

    public CanvasMouse(Surface canvas, Tracker tracker) {
        this.canvas = canvas;
        this.tracker = tracker;
    }

    @Override
    public void mousePressed(MouseEvent event) {
        canvas.requestFocusInWindow();
        Optional<BlockSpot> spot = canvas.map().at(event.getY());
        if (event.isPopupTrigger()) {
            tracker.popup(event, spot);
        } else if (SwingUtilities.isLeftMouseButton(event) || SwingUtilities.isMiddleMouseButton(event)) {
            tracker.press(event, spot);
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        tracker.drag(event);
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (event.isPopupTrigger() && !tracker.isHolding()) {
            tracker.popup(event, canvas.map().at(event.getY()));
        }
        tracker.release(event);
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        if (!canvas.panning()) {
            canvas.setCursor(Hover.cursor(canvas.map(), canvas.session(), event.getY()));
        }
    }
}
