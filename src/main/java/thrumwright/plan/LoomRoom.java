package thrumwright.plan;

import thrumwright.measure.Length;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKind;
import thrumwright.piece.Piece;

/**
 * What the loom leaves of a warp end, in mm.
 *
 * @param usual what is usual there
 * @param along as far as the warp can be woven on, from the lower bar
 * @param clearance from there to where the weaving begins
 * @param workingRoom wanted above the top
 * @param perEnd warp yarn that one end takes
 * @param behind free warp beyond that, above the top
 * @param travels whether the warp is moved on while it is woven
 * @param endless whether it is moved round and has no end there, so that both ends of the piece share what is free
 */
public record LoomRoom(
        UsualRoom usual,
        double along,
        double clearance,
        double workingRoom,
        double perEnd,
        double behind,
        boolean travels,
        boolean endless) {
    static LoomRoom of(Piece piece, BareEnds ends) {
        Loom loom = piece.loom();
        UsualRoom usual = loom.kind().of(new UsualRooms(piece, ends));
        boolean travels = loom.kind().travels() && !ends.looped();
        double perEnd = loom.warpPerEnd().map(Length::mm).orElse(usual.perEnd());
        return new LoomRoom(
                usual,
                travels ? perEnd - usual.lost() : loom.open().mm(),
                loom.clearance().map(Length::mm).orElse(usual.below().mm()),
                loom.workingRoom().map(Length::mm).orElse(usual.above().mm()),
                perEnd,
                travels ? usual.behind() : 0,
                travels,
                travels && loom.kind() instanceof LoomKind.RoundFrame);
    }

    /** Free warp below the start's edge, mm; any. */
    double freeBelow(Budget budget, BareEnds ends) {
        return endless
                ? shared(budget, ends) - ends.top().needed().orElse(0.0)
                : clearance + ends.start().edge();
    }

    /** Free warp above the top's edge, mm; any. */
    double freeAbove(Budget budget, BareEnds ends) {
        return endless
                ? shared(budget, ends) - ends.start().needed().orElse(0.0)
                : along + behind - budget.designEnds() - ends.top().edge();
    }

    /** All of the way round that isn't piece. */
    private double shared(Budget budget, BareEnds ends) {
        double piece = budget.designEnds()
                + ends.top().edge()
                - clearance
                - ends.start().edge();
        return along - piece;
    }
}
