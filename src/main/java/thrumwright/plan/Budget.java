package thrumwright.plan;

/**
 * The warp as far as it can be woven, from the lower bar up; where it travels, along the warp. All in mm.
 *
 * @param open as far as the warp can be woven on: between the bars, or once round
 * @param clearance below the start
 * @param start height of the start
 * @param design height of the design on the loom
 * @param top height of the top end
 * @param workingRoom wanted above the top end; nothing where warp loops close it, since it is woven full
 * @param closed whether warp loops close the top end: they stand where the piece ends, and there it must end
 */
public record Budget(
        double open, double clearance, double start, double design, double top, double workingRoom, boolean closed) {
    static Budget of(LoomRoom room, double start, double design, double top, boolean closed) {
        return new Budget(room.along(), room.clearance(), start, design, top, closed ? 0 : room.workingRoom(), closed);
    }

    /** Where the design begins, above the lower bar, mm, 0 or more. */
    public double startLine() {
        return clearance + start;
    }

    /** Where the design ends as planned, above the lower bar, mm, 0 or more. */
    public double designEnds() {
        return startLine() + design;
    }

    /**
     * Where the design must have ended at the latest, so that the top end and the working room fit, mm; any. Below loops it
     * must end just there.
     */
    public double stopLine() {
        return closed ? designEnds() : open - workingRoom - top;
    }

    /** What is left over, mm; below 0 the piece doesn't fit. */
    public double left() {
        return open - workingRoom - top - designEnds();
    }
}
