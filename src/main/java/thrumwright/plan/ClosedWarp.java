package thrumwright.plan;

import java.util.Optional;
import thrumwright.block.Setting;
import thrumwright.block.WarpLoops;
import thrumwright.piece.Piece;

/**
 * A warp that is closed at both ends: one yarn that is wound round two rods, cords or rows of nails, with nothing cut and
 * nothing lost. All in mm.
 *
 * @param apart clear height between the two, which the weaving fills
 * @param each one warp end, from the middle of one to the middle of the other
 * @param lowerLoops how many loops there are below
 * @param upperLoops how many there are above
 * @param turns warp yarn in all the loops
 * @param ties warp yarn to tie its beginning and its end
 * @param endsBelow whether the yarn ends where it began, below; otherwise it ends above
 */
public record ClosedWarp(
        double apart, double each, int lowerLoops, int upperLoops, double turns, double ties, boolean endsBelow) {
    /** Empty unless both ends of the piece are closed. */
    static Optional<ClosedWarp> of(Piece piece, EndPlan start, EndPlan top) {
        return start.loops()
                .flatMap(below -> top.loops().map(above -> {
                    int ends = piece.warp().ends();
                    Setting warp = piece.setting(piece.warpYarn());
                    double apart = start.height() + piece.design().heightOnLoom() + top.height();
                    int lower = WarpLoops.loops(ends, true);
                    int upper = WarpLoops.loops(ends, false);
                    return new ClosedWarp(
                            apart,
                            apart + (below.thick().mm() + above.thick().mm()) / 2,
                            lower,
                            upper,
                            lower * below.turn(warp) + upper * above.turn(warp),
                            2 * piece.habits().tie().mm(),
                            ends % 2 == 0);
                }));
    }

    /** Warp yarn in all: N ends, the loops, and both ties. */
    double length(int ends) {
        return ends * each + turns + ties;
    }
}
