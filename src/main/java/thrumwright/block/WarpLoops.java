package thrumwright.block;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.cord.Route;
import thrumwright.cord.Sense;
import thrumwright.cord.Visit;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * A closed edge: the warp runs in loops round something at this end, so that nothing is cut and the weaving begins, or
 * stops, right against the loops. One yarn makes all ends; from one to the next it turns round here and at the other end of
 * the loom by turns.
 *
 * @param round what the loops lie round
 * @param thick how thick that is
 */
public record WarpLoops(Tag tag, Held round, Length thick) implements EdgeFinish {
    /** What holds the loops on the loom. */
    public enum Held {
        /** A thin rod across the loom, drawn out in the end. */
        ROD,
        /** A cord across the loom, drawn out in the end. */
        CORD,
        /** A cord across the loom that stays in the edge. */
        CORD_STAYS,
        /** A row of nails, one for each loop. */
        NAILS,
        /** A jig’s bar, drawn out before anything is woven: another warp is linked through the loops and leads on to the loom. */
        LINKED;

        /** Whether it lies across the whole warp. */
        public boolean across() {
            return this != NAILS;
        }

        /** Whether it leaves the loops in the end. */
        public boolean comesOut() {
            return this != CORD_STAYS;
        }
    }

    public WarpLoops {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(round);
        if (!(thick.mm() > 0 && thick.mm() <= 60)) {
            throw new BadMeasure("loops.thick", Map.of("thick", thick));
        }
    }

    /** From the middle of what they lie round to the warp's own middle line, mm. */
    private static double radius(double thick, double warp) {
        return (thick + warp) / 2;
    }

    /** Whether another warp is linked through the loops. */
    public boolean linked() {
        return round == Held.LINKED;
    }

    /**
     * Warp in one loop, from the end that comes to the one that goes, mm. Round a rod or a cord half a turn that goes along
     * it by one space, √((πr)² + s²); round a nail half a turn in the plane of the warp, and aside to it and back,
     * πr + |s − 2r| (an upper figure).
     *
     * @param warp any yarn on its warp
     */
    public double turn(Setting warp) {
        return turn(warp, thick.mm());
    }

    private double turn(Setting warp, double thick) {
        double half = Math.PI * radius(thick, warp.warp());
        return round.across()
                ? Math.hypot(half, warp.spacing())
                : half + Math.abs(warp.spacing() - 2 * radius(thick, warp.warp()));
    }

    /** The way of one loop round a rod or a cord, seen along it, and along it as its climb. */
    public Strand strand(Setting warp) {
        Visit half = Visit.of(0, radius(thick.mm(), warp.warp()), Sense.CLOCKWISE);
        return new Strand(List.of(Leg.climbing(Route.of(List.of(half), Route.FRONT, Route.BACK), 0, warp.spacing())));
    }

    /**
     * How far the loops stand out from the cloth when what they lay round is gone, mm: half of what is left of their warp
     * when they lead straight from end to end. 0 where it stays. A linked warp is taken to be as thick as the warp.
     */
    public double standOut(Setting warp) {
        return round.comesOut() ? standOut(warp, linked() ? warp.warp() : thick.mm()) : 0;
    }

    private double standOut(Setting warp, double thick) {
        return Math.max(0, (turn(warp, thick) + thick - warp.spacing()) / 2);
    }

    /**
     * How far linked loops slip outwards when the jig’s bar is drawn out and they hang in the other warp, mm, 0 or more: so much more
     * can be woven at this end. 0 for all others.
     */
    public double slip(Setting warp) {
        return linked() ? Math.max(0, standOut(warp, thick.mm()) - standOut(warp, warp.warp())) : 0;
    }

    /** Loops between neighbouring ends: those at the start join the second end with the third, and so on. */
    public static int loops(int ends, boolean start) {
        return start ? (ends - 1) / 2 : ends / 2;
    }

    @Override
    public int endsPerGroup() {
        return 1;
    }

    @Override
    public boolean hangs() {
        return false;
    }

    /** Nothing is cut. */
    @Override
    public double freeWarp(Setting warp) {
        return 0;
    }

    @Override
    public Optional<Length> length() {
        return Optional.empty();
    }

    @Override
    public WarpLoops withLength(Length other) {
        return this;
    }

    @Override
    public List<String> stages(int made) {
        return List.of("warp-loops.stage.wound", "warp-loops.stage.first");
    }

    @Override
    public String key() {
        return "warp-loops";
    }

    @Override
    public boolean closed() {
        return true;
    }

    @Override
    public List<String> ownPlaces() {
        return List.of();
    }

    @Override
    public <R> R of(FinishCases<R> cases) {
        return cases.warpLoops(this);
    }

    @Override
    public WarpLoops mirrored() {
        return this;
    }

    @Override
    public WarpLoops withTag(Tag other) {
        return new WarpLoops(other, round, thick);
    }

    public WarpLoops withRound(Held other) {
        return new WarpLoops(tag, other, thick);
    }

    public WarpLoops withThick(Length other) {
        return new WarpLoops(tag, round, other);
    }
}
