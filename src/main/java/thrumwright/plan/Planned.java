package thrumwright.plan;

import thrumwright.piece.Measures;
import thrumwright.piece.Piece;

/**
 * A plan, and what was found out on the way to it: the plan of another state of the piece takes over what hasn't changed. Only
 * a plan is ever shown; this is kept by whoever plans one state after another.
 */
public final class Planned {
    private final Plan plan;
    private final EndMemory start;
    private final EndMemory top;

    Planned(Plan plan, EndMemory start, EndMemory top) {
        this.plan = plan;
        this.start = start;
        this.top = top;
    }

    /** The first plan of a piece. */
    public static Planned of(Piece piece) {
        return new Planner(piece, Measures.NONE, EndMemory.NOTHING, EndMemory.NOTHING).planned();
    }

    /** The plan of another state of the piece, or of another piece: the same as if nothing were known of it. */
    public Planned next(Piece piece) {
        return new Planner(piece, Measures.NONE, start, top).planned();
    }

    public Plan plan() {
        return plan;
    }
}
