package thrumwright.editor.canvas.seen;

import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;

/**
 * A block on the canvas.
 *
 * @param top its upper line, pixels of the canvas
 * @param bottom its lower line, pixels of the canvas; the same for what has no height
 */
public record BlockSpot(Place place, BlockPlan plan, double top, double bottom) {
    public String id() {
        return plan.block().id();
    }

    public boolean isOf(Place where, String id) {
        return place == where && id().equals(id);
    }

    /** Half way between its lines, pixels of the canvas. */
    public double middle() {
        return (top + bottom) / 2;
    }

    /** From its upper to its lower line, pixels, 0 or more. */
    public double high() {
        return bottom - top;
    }

    /** Whether it has no height. */
    public boolean line() {
        return high() < 0.01;
    }
}
