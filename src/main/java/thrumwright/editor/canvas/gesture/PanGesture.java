package thrumwright.editor.canvas.gesture;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import thrumwright.editor.canvas.seen.Surface;

/** Moves the picture under the window. */
final class PanGesture implements Gesture {
    private final Surface canvas;
    private Point last;

    /** @param from on the screen, since the canvas itself moves */
    PanGesture(Surface canvas, Point from) {
        this.canvas = canvas;
        this.last = from;
    }

    @Override
    public void drag(MouseEvent event) {
        Point now = event.getLocationOnScreen();
        Rectangle seen = canvas.getVisibleRect();
        seen.translate(last.x - now.x, last.y - now.y);
        last = now;
        canvas.scrollRectToVisible(seen);
    }

    @Override
    public void release(MouseEvent event) {
        // It has been done already.
    }

    @Override
    public void cancel() {
        // What was looked at is nothing to be taken back.
    }
}
