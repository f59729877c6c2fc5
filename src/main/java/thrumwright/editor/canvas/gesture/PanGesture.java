package thrumwright.editor.canvas.gesture;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import thrumwright.editor.canvas.seen.Surface;

/** Moves the picture under the window. */
final class PanGesture implements Gesture {
    /** So far it must be dragged sideways before a middle that is left out is shown, pixels. */
    private static final int MEANT = 20;

    private final Surface canvas;
    private final Point from;
    private Point last;

    /** @param from on the screen, since the canvas itself moves */
    PanGesture(Surface canvas, Point from) {
        this.canvas = canvas;
        this.from = from;
        this.last = from;
    }

    @Override
    public void drag(MouseEvent event) {
        Point now = event.getLocationOnScreen();
        int aside = from.x - now.x;
        if (Math.abs(aside) > MEANT && Math.abs(aside) > Math.abs(from.y - now.y)) {
            canvas.joinMiddle(aside > 0);
        }
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
