package thrumwright.block;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.yarn.Packing;

/**
 * What becomes of the warp ends once the piece is cut off. It has no height; it stands at the edge that stays.
 *
 * @param endsPerGroup warp ends that are knotted, plied or plaited together; darned ends go one by one
 * @param hanging how long the finished fringe hangs; for darned-in ends how far each is darned back
 */
public record WarpFinish(Tag tag, Kind kind, int endsPerGroup, Length hanging) implements Block {
    /**
     * An overhand knot takes at most so many bundle diameters of each end: the tight trefoil, closed (Denne, Diao,
     * Sullivan, Geom. Topol. 10 (2006)); an upper figure for the open knot.
     */
    public static final double KNOT = 16.372;
    /** Free warp that the hands need to work any finish, mm (from memory). */
    public static final double HANDS = 150;

    /** The ways to finish warp ends; the factor is cut length over hanging length by the published hand rules. */
    public enum Kind {
        KNOTTED(1),
        PLIED(1.25),
        PLAITED(1.5),
        DARNED(1);

        private final double takeUp;

        Kind(double takeUp) {
            this.takeUp = takeUp;
        }
    }

    public WarpFinish {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(kind);
        Twining.checkGroup(endsPerGroup);
        if (!(hanging.mm() > 0 && hanging.mm() <= 1000)) {
            throw new BadMeasure("A fringe is longer than 0 and at most 1 m, not “" + hanging + "”.");
        }
    }

    /**
     * Free warp that each end needs beyond the edge, mm: the hanging length with what plying or plaiting takes up, the
     * knot, and never less than the hands need.
     *
     * @param warpDiameter mm
     */
    public double freeWarp(double warpDiameter) {
        double knot = kind == Kind.DARNED ? 0 : KNOT * bundle(warpDiameter);
        return Math.max(HANDS, hanging.mm() * kind.takeUp + knot);
    }

    /** Diameter of one group's bundle, mm. */
    public double bundle(double warpDiameter) {
        return warpDiameter * Packing.ratio(endsPerGroup);
    }

    /** The sizes of the groups from the left: m = round(N/g) of them, differing by at most one, the larger outside. */
    public List<Integer> groups(int ends) {
        int count = Math.max(1, (int) Math.round((double) ends / endsPerGroup));
        int larger = ends % count;
        List<Integer> sizes = new ArrayList<>(Collections.nCopies(count, ends / count));
        for (int i = 0; i < larger / 2; i++) {
            sizes.set(i, ends / count + 1);
            sizes.set(count - 1 - i, ends / count + 1);
        }
        if (larger % 2 != 0) {
            sizes.set(count / 2, ends / count + 1);
        }
        return sizes;
    }

    @Override
    public WarpFinish mirrored() {
        return this;
    }

    @Override
    public WarpFinish withTag(Tag other) {
        return new WarpFinish(other, kind, endsPerGroup, hanging);
    }
}
