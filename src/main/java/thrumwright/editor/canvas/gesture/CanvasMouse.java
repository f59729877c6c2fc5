package thrumwright.editor.canvas.gesture;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;

/** The mouse on the canvas. */
public final class CanvasMouse extends MouseAdapter {
    private final Surface canvas;
    private final Tracker tracker;
    private final Function<Point, Optional<Runnable>> figures;

    /** @param figures what opens the figure at a point of the canvas, if there is one to be typed over */
    public CanvasMouse(Surface canvas, Tracker tracker, Function<Point, Optional<Runnable>> figures) {
        this.canvas = canvas;
        this.tracker = tracker;
        this.figures = figures;
    }

    @Override
    public void mousePressed(MouseEvent event) {
        canvas.requestFocusInWindow();
        Optional<BlockSpot> spot = canvas.map().at(event.getY());
        Optional<Runnable> figure = figures.apply(event.getPoint());
        if (figure.isPresent() && SwingUtilities.isLeftMouseButton(event)) {
            figure.get().run();
        } else if (event.isPopupTrigger()) {
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
        if (figures.apply(event.getPoint()).isPresent()) {
            canvas.setCursor(Cursor.getPredefinedCursor(Cursor.TEXT_CURSOR));
        } else if (!canvas.panning()) {
            canvas.setCursor(Hover.cursor(canvas.map(), canvas.session(), event.getY()));
        }
    }
}
