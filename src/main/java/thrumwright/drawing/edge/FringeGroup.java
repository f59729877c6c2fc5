package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;

/** Some warp ends that are worked together beyond the edge of the cloth. */
record FringeGroup(Graphics2D g, EdgePen pen, Color warp, Hanging at) {
    /** Of the distance between ends, how thick one is drawn; and at most of what hangs. */
    private static final double THICK = 0.5;

    private static final double THICK_OF_ALL = 0.06;

    /**
     * Where it hangs, page units.
     *
     * @param first x of its leftmost end
     * @param pitch from one end to the next
     * @param size number of ends
     * @param edge y of the cloth's edge
     * @param knot y of the first knot
     * @param bottom y of what can be painted on
     */
    record Hanging(double first, double pitch, int size, double edge, double knot, double bottom) {
        /** Another group beside it, with its knot at a share of the way to the tips. */
        Hanging with(double x, int ends, double down) {
            return new Hanging(x, pitch, ends, edge, edge + down * (bottom - edge), bottom);
        }

        double middle() {
            return first + (size - 1) * pitch / 2;
        }

        /** How thick an end is drawn. */
        double thick() {
            return Math.min(pitch * THICK, (bottom - edge) * THICK_OF_ALL);
        }

        double tip() {
            return bottom - (bottom - edge) * 0.05;
        }
    }

    private double thick() {
        return at.thick();
    }

    /** A knot of the whole group with its upper edge at a height, page units. */
    OverhandKnot knotAt(double y, double unit) {
        return new OverhandKnot(at.middle(), y, unit, at.size(), thick());
    }

    private double bundle() {
        return OverhandKnot.bundle(at.size(), thick());
    }

    /** Knotted, and the rest hanging. */
    void knotted() {
        OverhandKnot knot = OverhandKnot.tight(at.middle(), at.knot(), bundle());
        gather(at.knot());
        finish(knot, at.knot() - 1, 1);
    }

    /** A knot drawn tight, and the ends below it; {@code wide} as a share of what is usual. */
    private void finish(OverhandKnot knot, double from, double wide) {
        spread(knot.leaves(), knot.below() - 0.5 * bundle(), at.tip(), wide);
        knot.draw(pen, warp, from, Double.NaN, OverhandKnot.THROUGH);
    }

    /** Hanging as it comes from the cloth. */
    void straight() {
        for (int i = 0; i < at.size(); i++) {
            double x = at.first() + i * at.pitch();
            Path2D end = new Path2D.Double();
            end.moveTo(x, at.edge() - 2);
            end.lineTo(x, at.tip());
            pen.cord(end, thick(), warp);
        }
    }

    /** Twisted to a cord of so many strands, and knotted at its end. */
    void corded(int strands) {
        gather(at.knot());
        double size = cordSize(strands);
        double end = at.bottom() - (at.bottom() - at.edge()) * 0.1 - 2 * size;
        new TwistedCord(at.middle(), at.knot(), size, strands, 1).draw(g, end + size * 0.3, warp);
        finish(OverhandKnot.tight(at.middle(), end, 1.15 * size), end - 1, 0.5);
    }

    double cordSize(int strands) {
        return thick() * (strands == 2 ? 1.6 : 1.8);
    }

    /** Ends from one place apart to the tips; {@code wide} as a share of what is usual. */
    void spread(double x, double from, double to, double wide) {
        for (int i = 0; i < at.size(); i++) {
            double aside = (i - (at.size() - 1) / 2.0) * thick();
            Path2D end = new Path2D.Double();
            end.moveTo(x + aside * 0.85, from);
            end.curveTo(
                    x + aside * 0.9,
                    from + (to - from) * 0.3,
                    x + aside * 1.5 * wide,
                    from + (to - from) * 0.5,
                    x + aside * 1.45 * wide,
                    to);
            pen.cord(end, thick(), warp);
        }
    }

    /** From the edge to one bundle at a height. */
    void gather(double to) {
        gather(0, at.size(), at.middle(), to);
    }

    /** Some of its ends from the edge to a bundle. */
    void gather(int from, int count, double middle, double to) {
        double down = to - at.edge();
        double within = thick() * 0.85;
        for (int i = 0; i < count; i++) {
            double x = at.first() + (from + i) * at.pitch();
            double there = middle + (i - (count - 1) / 2.0) * within;
            Path2D end = new Path2D.Double();
            end.moveTo(x, at.edge() - 2);
            end.curveTo(x, at.edge() + down * 0.5, there, to - down * 0.4, there, to);
            pen.cord(end, thick(), warp);
        }
    }
}
