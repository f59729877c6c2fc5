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

    private static final int POINTS = 11;
    /** How far it reaches into the cloth, in thicknesses, so that no gap shows where the yarn bends. */
    private static final double OVERLAP = 0.15;

    /**
     * Hangs tails so that none lies on another: one ends above that below it where there is room for that, or passes
     * outside it.
     */
    public static List<Tail> hung(List<Tail> tails) {
        List<Tail> lowestFirst = new ArrayList<>(tails);
        lowestFirst.sort(Comparator.comparingDouble(Tail::y));
        List<Tail> hung = new ArrayList<>();
        for (Tail tail : lowestFirst) {
            Tail clear = tail;
            for (int i = hung.size() - 1; i >= 0; i--) {
                if (hung.get(i).side == tail.side) {
                    clear = clear.clearOf(hung.get(i));
                }
            }
            hung.add(clear);
        }
        return hung;
    }

    /** Shorter, or farther out, so that it doesn't lie on one that begins below it. */
    private Tail clearOf(Tail below) {
        double touching = 0.58 * (below.thickness + thickness);
        double room = y - below.y - touching;
        if (down <= room) {
            return this;
        }
        if (room >= 2.5 * thickness) {
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
