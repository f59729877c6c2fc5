package thrumwright.editor.canvas.gesture;

import java.awt.Point;
import java.awt.event.MouseEvent;

/** Tells a pull from a click. */
final class Meant {
    /** Pixels. */
    private static final double LEAST = 4;

    private Meant() {}

    /** Whether the mouse has gone far enough to be meant. */
    static boolean far(Point from, MouseEvent event) {
        return from.distance(event.getPoint()) >= LEAST;
    }
}
