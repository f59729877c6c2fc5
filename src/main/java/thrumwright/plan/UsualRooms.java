package thrumwright.plan;

import thrumwright.measure.Decimals;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomCases;
import thrumwright.piece.LoomKind;
import thrumwright.piece.Piece;
import thrumwright.plan.UsualRoom.Free;
import thrumwright.plan.UsualRoom.Why;

/** What is usual on each kind of loom, in whole inches or as many times 2.5 cm. */
record UsualRooms(Piece piece, BareEnds ends) implements LoomCases<UsualRoom> {
    /** To tie a hem's ends in pairs (common practice, no source). */
    private static final int HEM = 4;
    /** To begin where the hands can still get behind the warp (common practice, no source). */
    private static final int LEAST = 2;
    /** For hands and needle at the top of a warp that can't be moved (common practice, no source). */
    private static final int HANDS = 6;
    /** The same with shed stick and leashes: of 17 in left at the top 4 to 5 could still have been woven [scanlin]. */
    private static final int LEASHES = 12;
    /** At the end of a warp that was moved to the middle of the loom (common practice, no source). */
    private static final int MOVED = 4;
    /** What is cut off at a bar with its knots (common practice, no source). */
    private static final int KNOTS = 1;
    /** Round both bars, with knots (common practice, no source). */
    private static final int TIED = 6;
    /** Share of a roller loom's waste that lies behind: 11 in of 17 [audit]. */
    private static final double BEHIND = 11 / 17.0;
    /** Of a loom whose bars nobody measured, mm: a pipe of ⅞ in. */
    private static final double BAR = 22;

    @Override
    public UsualRoom barToBar(LoomKind.BarToBar kind) {
        return new UsualRoom(
                ends.looped() ? reach() : hem().or(finish(ends.neededBelow() + hand(KNOTS))),
                shed().or(finish(ends.neededAbove() + hand(KNOTS))),
                open() + hand(TIED));
    }

    /** What is free lies at the back, for both ends together. */
    @Override
    public UsualRoom roundFrame(LoomKind.RoundFrame kind) {
        double both = ends.neededBelow() + ends.neededAbove() + hand(KNOTS) - hand(LEAST);
        return new UsualRoom(reach(), moved().or(finish(both)), wayRound());
    }

    /** The loops on the joining bar are nowhere tied, so nothing is lost. */
    @Override
    public UsualRoom joiningBar(LoomKind.JoiningBar kind) {
        return new UsualRoom(
                reach().or(finish(ends.neededBelow())), moved().or(finish(ends.neededAbove())), wayRound());
    }

    /** An end goes from one to the other and by one space along. */
    @Override
    public UsualRoom pegged(LoomKind.Pegged kind) {
        Free below = ends.looped() ? new Free(0, Why.REACH) : reach().or(finish(ends.neededBelow()));
        return new UsualRoom(
                below,
                shed().or(finish(ends.neededAbove())),
                open() + piece.warp().sett().spacing());
    }

    @Override
    public UsualRoom rollers(LoomKind.Rollers kind) {
        double waste = kind.waste().mm();
        Free below = reach().or(finish(ends.neededBelow()));
        Free above = new Free(0, Why.WASTE).or(finish(ends.neededAbove() - waste * BEHIND));
        double woven = ends.start().height()
                + piece.design().heightOnLoom()
                + ends.top().height();
        return new UsualRoom(below, above, rounded(below.mm() + woven + above.mm() + waste), waste, waste * BEHIND);
    }

    private Free reach() {
        return new Free(hand(LEAST), Why.REACH);
    }

    private Free hem() {
        return new Free(hand(HEM), Why.HEM);
    }

    private Free moved() {
        return new Free(hand(MOVED), Why.HANDS);
    }

    private Free finish(double mm) {
        return new Free(rounded(mm), Why.FINISH);
    }

    private Free shed() {
        boolean leashes = piece.loom().sheds().named();
        return new Free(hand(leashes ? LEASHES : HANDS), leashes ? Why.LEASHES : Why.HANDS);
    }

    /** Round two bars of one thickness, from middle to middle: 2(A + b) + π(b + d_w). */
    private double wayRound() {
        double bar = piece.loom()
                .uprights()
                .map(Loom.Uprights::diameter)
                .map(Length::mm)
                .orElse(BAR);
        double warp = piece.warpYarn().diameter();
        return 2 * (open() + bar) + Math.PI * (bar + warp);
    }

    private double open() {
        return piece.loom().open().mm();
    }

    private double hand(int inches) {
        return inches * (inInches() ? Unit.INCH.millimetres() : 25);
    }

    private boolean inInches() {
        return piece.habits().units() == UnitSystem.INCHES;
    }

    private double rounded(double mm) {
        return Decimals.roundedUp(Math.max(0, mm), inInches() ? Unit.INCH.millimetres() / 2 : 10);
    }
}
