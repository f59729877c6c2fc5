package thrumwright.drawing.yarn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thrumwright.block.Setting;
import thrumwright.block.Side;

/**
 * An end of a yarn that leaves the edge and hangs.
 *
 * @param yarn what it is of
 * @param side the side at which it hangs
 * @param x where its yarn ends in the cloth, mm
 * @param y how high that is above the lowest line of the picture, mm
 * @param lies how it leaves the cloth
 * @param thickness of its yarn, mm
 * @param out how far beyond the edge end it hangs, mm
 * @param down how far it hangs down, mm
 */
public record Tail(DyedYarn yarn, Side side, double x, double y, Lies lies, double thickness, double out, double down) {
    /** How a tail leaves the cloth. */
    public enum Lies {
        BEHIND,
        /** In front of the warp, and of its own row. */
        IN_FRONT,
        /** In front of the warp, from under the wraps of its own row. */
        UNDER_ITS_ROW
    }

    /**
     * How tails hang beside each other.
     *
     * @param shortest none is cut shorter so that it needn't pass outside another: thicknesses
     * @param touching from the middle of one to that of the next, a share of both thicknesses
     */
    private record Manner(double shortest, double touching) {}

    private static final int POINTS = 11;
    private static final Manner LOOSELY = new Manner(2.5, 0.58);

    private static final Manner CLOSELY = new Manner(1.6, 0.54);

    /** How far one hangs that hangs close, thicknesses. */
    private static final double LONG_CLOSE = 2.4;
    /** How far it reaches into the cloth, in thicknesses, so that no gap shows where the yarn bends. */
    private static final double OVERLAP = 0.15;

    /**
     * Hangs tails so that none lies on another: one ends above that below it where there is room for that, or passes
     * outside it.
     */
    public static List<Tail> hung(List<Tail> tails) {
        return hung(tails, LOOSELY);
    }

    /**
     * As {@link #hung}, but close beside the cloth: none reaches farther down or out than is needed to see that it hangs.
     *
     * @param turns how far those of the cloth reach beyond the edge ends, mm, 0 or more
     */
    public static List<Tail> hungClose(List<Tail> tails, double turns) {
        return hung(tails.stream().map(tail -> tail.close(turns)).toList(), CLOSELY);
    }

    private Tail close(double turns) {
        double nearer = Math.min(out, turns + 0.6 * thickness);
        double shorter = Math.min(down, Math.max(1.1 * nearer, LONG_CLOSE * thickness));
        return new Tail(yarn, side, x, y, lies, thickness, nearer, shorter);
    }

    private static List<Tail> hung(List<Tail> tails, Manner manner) {
        List<Tail> lowestFirst = new ArrayList<>(tails);
        lowestFirst.sort(Comparator.comparingDouble(Tail::y));
        List<Tail> hung = new ArrayList<>();
        for (Tail tail : lowestFirst) {
            Tail clear = tail;
            for (int i = hung.size() - 1; i >= 0; i--) {
                if (hung.get(i).side == tail.side) {
                    clear = clear.clearOf(hung.get(i), manner);
                }
            }
            hung.add(clear);
        }
        return hung;
    }

    /** Shorter, or farther out, so that it doesn't lie on one that begins below it. */
    private Tail clearOf(Tail below, Manner manner) {
        double touching = manner.touching() * (below.thickness + thickness);
        double room = y - below.y - touching;
        if (down <= room) {
            return this;
        }
        if (room >= manner.shortest() * thickness) {
            return new Tail(yarn, side, x, y, lies, thickness, out, room);
        }
        return new Tail(yarn, side, x, y, lies, thickness, Math.max(out, below.out + touching), down);
    }

    /** The same tail, cut so that it doesn't hang below a line, which lies at any height, mm. */
    public Tail above(double line) {
        double most = Math.max(1.2 * thickness, y - line - thickness / 2);
        return new Tail(yarn, side, x, y, lies, thickness, out, Math.min(down, most));
    }

    /** The same tail with heights counted from a line that lies so far below: mm, either sign. */
    public Tail raised(double mm) {
        return new Tail(yarn, side, x, y + mm, lies, thickness, out, down);
    }

    /** Whether it comes from the front of the warp. */
    public boolean inFront() {
        return lies != Lies.BEHIND;
    }

    /** How far it reaches beyond the edge end, mm, 0 or more. */
    public double reach() {
        return out + thickness;
    }

    /** Its line: out from the edge, and down. */
    public Stretch stretch(Setting setting) {
        double edge = side == Side.LEFT ? 0 : setting.span();
        int way = side == Side.LEFT ? -1 : 1;
        double bend = Math.min(down, out) * 0.8;
        double[] xs = new double[POINTS];
        double[] ys = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double angle = Math.PI / 2 * Math.min(1, i / (POINTS - 2.0));
            xs[i] = i == 0 ? x - way * OVERLAP * thickness : edge + way * (out - bend + bend * Math.sin(angle));
            ys[i] = i == POINTS - 1 ? y - down : y - bend * (1 - Math.cos(angle));
        }
        return Stretch.loose(xs, ys, thickness);
    }
}
