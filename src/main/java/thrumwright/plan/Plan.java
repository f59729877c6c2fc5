package thrumwright.plan;

import java.util.List;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.WarpLoops;
import thrumwright.piece.Datum;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Ticks;

/**
 * Everything that follows from a piece.
 *
 * @param afterDesign the design's last pick, given or assumed, from which the top goes on
 * @param room what the loom leaves of a warp end
 * @param totals in the order of the piece's yarns, those used only
 */
public record Plan(
        Piece piece,
        EndPlan start,
        EndPlan top,
        Course afterDesign,
        Budget budget,
        LoomRoom room,
        List<YarnTotal> totals) {
    public Plan {
        totals = List.copyOf(totals);
    }

    public static Plan of(Piece piece) {
        return Planned.of(piece).plan();
    }

    /**
     * As it comes out, by what was measured on the loom so far: heights that were reached stand where they were measured, and
     * what lies above moves with them. Where nothing was measured it is the plan.
     */
    public static Plan asWoven(Piece piece) {
        return new Planner(piece, piece.measures(), EndMemory.NOTHING, EndMemory.NOTHING)
                .planned()
                .plan();
    }

    /** As it was planned before anything was changed to make up for what was measured. */
    public static Plan asFirstPlanned(Piece piece) {
        return of(Grown.undone(piece));
    }

    Plan with(List<YarnTotal> others) {
        return new Plan(piece, start, top, afterDesign, budget, room, others);
    }

    /** The same as if nothing of it were woven yet. */
    public Plan unticked() {
        return new Plan(piece.withTicks(Ticks.NONE), start, top, afterDesign, budget, room, totals);
    }

    public EndPlan end(Place place) {
        return place == Place.START ? start : top;
    }

    /**
     * Length of warp yarn in all, mm, more than 0: the number of ends times what each takes on the loom; of a warp that is closed at both
     * ends what is wound.
     */
    public double warpYarn() {
        return Planner.warpYarn(piece, start, top, room);
    }

    /** The warp, if it is closed at both ends. */
    public Optional<ClosedWarp> closedWarp() {
        return ClosedWarp.of(piece, start, top);
    }

    /**
     * How long the warp is that is linked through the upper loops, from them to the bar beyond, mm, 0 or more; 0 where none is:
     * as long as the shed needs, if there is room for it. The shed
     * goes on into it.
     */
    public double linked() {
        boolean linked = top.loops().filter(WarpLoops::linked).isPresent();
        double room = budget.open() - budget.designEnds() - budget.top();
        return linked ? Math.max(0, Math.min(room, closingShed().hands())) : 0;
    }

    /** How the shed closes towards loops at the top, in the last stripe's yarn. */
    public ClosingShed closingShed() {
        return ClosingShed.of(piece.stripe(Place.TOP));
    }

    /** The hook-and-loop strip that suits its weight. */
    public HangingStrip strip() {
        return HangingStrip.of(this);
    }

    /** What heights at an end are said from. */
    public Datum datum(Place place) {
        if (room.travels() && place == Place.TOP) {
            return Datum.START_LINE;
        }
        boolean fixed = piece.loom().kind().travels() && !room.travels();
        return fixed ? Datum.LOWER_BAR : piece.loom().kind().datum();
    }

    /**
     * A height as it is said at an end, mm, any.
     *
     * @param mm along the warp from the loom's own datum, any
     */
    public double above(Place place, double mm) {
        return datum(place) == Datum.START_LINE ? mm - budget.startLine() : mm;
    }

    /** Where the piece begins and ends along the warp, what stays of it: warp free of it goes once round from the top edge. */
    public double freeRound() {
        return room.along() - budget.designEnds() - top.edge() + budget.clearance() + start.edge();
    }

    /** Finished width, mm, more than 0: that of the cloth, with what it draws in. */
    public double finishedWidth() {
        return piece.warp().clothWidth();
    }

    /** Finished height without fringes, mm, more than 0: the design off the loom and what both ends show in front. */
    public double finishedHeight() {
        return piece.design().height().mm() + start.inFront() + top.inFront();
    }

    /** The board that it is sewn to, if it is made for one. */
    public Optional<MountingBoard> board() {
        return piece.destiny().mounted()
                ? Optional.of(MountingBoard.of(piece, finishedWidth(), finishedHeight()))
                : Optional.empty();
    }

    /** Its lining, if it hangs and is to have one. */
    public Optional<Lining> lining() {
        boolean lined = piece.destiny().hung() && piece.destiny().lined();
        return lined ? Optional.of(Lining.of(piece, top, finishedWidth(), finishedHeight())) : Optional.empty();
    }

    /** The cord that is sewn along its edges, if there is one. */
    public Optional<SewnCord> sewnCord() {
        return piece.destiny().cord().map(cord -> SewnCord.of(piece, cord, finishedWidth(), finishedHeight()));
    }
}
