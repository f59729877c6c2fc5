package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import thrumwright.block.WarpFinish;

/** Some warp ends that are worked together, or side by side, beyond the edge of the cloth. */
record FringeGroup(Graphics2D g, EdgePen pen, Color warp, Hanging at) {
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
        double middle() {
            return first + (size - 1) * pitch / 2;
        }

        /** How thick an end is drawn. */
        double thick(boolean darned) {
            return Math.min(pitch * (darned ? 0.3 : 0.55), (bottom - edge) * (darned ? 0.3 : 0.07));
        }
    }

    /** @param last number within the group, from 0, of the last end of all; beyond the group if it is in a later one */
    void draw(WarpFinish.Kind kind, int last) {
        double width = at.thick(kind == WarpFinish.Kind.DARNED);
        switch (kind) {
            case KNOTTED -> {
                gather(width);
                hanging(width);
                pen.knot(at.middle(), at.knot(), width * 2.4, warp);
            }
            case PLIED -> twisted(width, width * 1.6, 2);
            case PLAITED -> twisted(width, width * 1.8, 3);
            case DARNED -> darned(width, last);
        }
    }

    private void twisted(double width, double size, int strands) {
        gather(width);
        double tip = at.bottom() * 0.9 + at.edge() * 0.1;
        new TwistedCord(at.middle(), at.knot(), size, strands).draw(g, tip, warp);
        pen.knot(at.middle(), tip, width * 2.2, warp);
    }

    private void hanging(double width) {
        double middle = at.middle();
        double knot = at.knot();
        double bottom = at.bottom();
        for (int i = 0; i < at.size(); i++) {
            double spread = (i - (at.size() - 1) / 2.0) * width * 1.2;
            Path2D end = new Path2D.Double();
            end.moveTo(middle, knot);
            end.curveTo(
                    middle + spread * 0.3,
                    knot + (bottom - knot) * 0.3,
                    middle + spread * 1.3,
                    knot + (bottom - knot) * 0.5,
                    middle + spread * 1.2,
                    bottom - (bottom - at.edge()) * 0.06);
            pen.cord(end, width, warp);
        }
    }

    private void gather(double width) {
        double middle = at.middle();
        double down = at.knot() - at.edge();
        for (int i = 0; i < at.size(); i++) {
            double x = at.first() + i * at.pitch();
            Path2D end = new Path2D.Double();
            end.moveTo(x, at.edge() - 2);
            end.curveTo(
                    x,
                    at.edge() + down * 0.5,
                    middle + (x - middle) * 0.4,
                    at.knot() - down * 0.3,
                    middle + (x - middle) * 0.25,
                    at.knot());
            pen.cord(end, width, warp);
        }
    }

    /** Each end turned back up beside its neighbour, behind the cloth. */
    private void darned(double width, int last) {
        for (int i = 0; i < at.size(); i++) {
            double x = at.first() + i * at.pitch();
            double back = x + beside(i == last) * at.pitch();
            double turn = at.edge() + (at.bottom() - at.edge()) * 0.75;
            Path2D loop = new Path2D.Double();
            loop.moveTo(x, at.edge() - 2);
            loop.curveTo(x, turn, back, turn, back, at.edge() - 2);
            pen.cord(loop, width, warp);
        }
    }

    /** Where an end is darned back, in distances between ends: towards its right neighbour, the last one to its left. */
    static double beside(boolean last) {
        return last ? -0.4 : 0.4;
    }
}
