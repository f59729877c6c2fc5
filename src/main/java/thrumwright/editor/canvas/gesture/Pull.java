package thrumwright.editor.canvas.gesture;

import java.awt.Point;
import java.awt.event.MouseEvent;

/** Where the mouse pulls something to, once it has gone far enough to be meant. */
final class Pull {
    /** As near as this to where it was pressed it may have trembled, pixels. */
    private static final int MEANT = 4;

    private final Point from;
    private Point pointer;
    private boolean meant;

    Pull(Point from) {
        this.from = from;
        this.pointer = from;
    }

    void to(MouseEvent event) {
        pointer = event.getPoint();
        meant |= from.distance(pointer) >= MEANT;
    }

    Point pointer() {
        return pointer;
    }

    /** How far up it was pulled, pixels. */
    int up() {
        return from.y - pointer.y;
    }

    boolean isMeant() {
        return meant;
    }

    void giveUp() {
        meant = false;
    }
}
