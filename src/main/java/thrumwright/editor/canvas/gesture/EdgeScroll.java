package thrumwright.editor.canvas.gesture;

import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.function.Consumer;
import javax.swing.Timer;
import thrumwright.editor.canvas.seen.Surface;

/** Moves what is seen of the canvas along while something is held near its upper or lower edge. */
final class EdgeScroll {
    private static final int NEAR = 22;
    private static final int STEP = 14;
    private static final int EVERY_MS = 40;

    private final Surface canvas;
    private final Timer timer;
    private MouseEvent last;

    /** @param again told of the pointer's new place on the canvas after each move */
    EdgeScroll(Surface canvas, Consumer<MouseEvent> again) {
        this.canvas = canvas;
        this.timer = new Timer(EVERY_MS, event -> step(again));
    }

    void held(MouseEvent event) {
        last = event;
        if (by() != 0) {
            timer.start();
        } else {
            timer.stop();
        }
    }

    void stop() {
        timer.stop();
    }

    private int by() {
        Rectangle seen = canvas.getVisibleRect();
        if (last.getY() < seen.y + NEAR) {
            return -Math.min(STEP, seen.y);
        }
        boolean low = last.getY() > seen.getMaxY() - NEAR;
        return low ? Math.min(STEP, canvas.getHeight() - (int) seen.getMaxY()) : 0;
    }

    private void step(Consumer<MouseEvent> again) {
        int by = by();
        if (by == 0) {
            timer.stop();
            return;
        }
        Rectangle seen = canvas.getVisibleRect();
        seen.translate(0, by);
        canvas.scrollRectToVisible(seen);
        last.translatePoint(0, by);
        again.accept(last);
    }
}
