package thrumwright.drawing.yarn;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * Short slanted strokes across a yarn, where one ply passes under the next. Yarns are drawn as plied to the left (S):
 * held upright, the marks lean like the middle of an S (common practice, no source).
 */
final class PlyMarks {
    /** Marks reach so far to either side of the middle, as a share of the thickness. */
    static final double REACH = 0.36;
    /** How much of the yarn must stand out for a mark to be seen. */
    private static final double LIT = 0.3;

    private final List<Path2D> strokes;
    private final double reach;
    private final Optional<Rectangle2D> visible;
    private int next;

    /**
     * @param strokes that take the marks by turns
     * @param reach how far they reach to either side of the middle, a share of the thickness, 0 to 0.5
     * @param visible what is seen of the page; empty where all of it is
     */
    PlyMarks(List<Path2D> strokes, double reach, Optional<Rectangle2D> visible) {
        this.strokes = strokes;
        this.reach = reach;
        this.visible = visible;
    }

    List<Path2D> strokes() {
        return strokes;
    }

    /** @param slant +1 from the front, −1 for a picture that is to be mirrored */
    void add(Spine spine, int plies, int slant) {
        double apart = apart(spine.thickest(), plies);
        double carried = apart / 2;
        for (int i = 1; i <= spine.last(); i++) {
            double x = spine.x()[i - 1];
            double y = spine.y()[i - 1];
            double dx = spine.x()[i] - x;
            double dy = spine.y()[i] - y;
            double length = Math.hypot(dx, dy);
            for (; carried < length; carried += apart) {
                double share = carried / length;
                if (between(spine.lift(), i, share) < LIT) {
                    continue;
                }
                // those that aren't seen have their turn too, so that marks keep their colours whatever is seen
                Path2D turn = strokes.get(next++ % strokes.size());
                if (seen(x + dx * share, y + dy * share, spine.thickest())) {
                    double nx = between(spine.nx(), i, share);
                    double ny = between(spine.ny(), i, share);
                    double half = between(spine.width(), i, share) * reach;
                    double unit = Math.max(1e-9, Math.hypot(nx, ny));
                    mark(turn, x + dx * share, y + dy * share, -ny / unit, nx / unit, slant * half);
                }
            }
            carried -= length;
        }
    }

    /** Whether anything of a mark there may be seen: it reaches less than the yarn's thickness. */
    private boolean seen(double x, double y, double thick) {
        return visible.map(part -> x + thick >= part.getMinX()
                        && x - thick <= part.getMaxX()
                        && y + thick >= part.getMinY()
                        && y - thick <= part.getMaxY())
                .orElse(true);
    }

    /** From one mark to the next: the more plies, the closer. */
    static double apart(double thick, int plies) {
        return thick * (plies <= 2 ? 0.8 : plies <= 4 ? 0.6 : 0.5);
    }

    private static double between(double[] values, int i, double share) {
        return values[i - 1] + (values[i] - values[i - 1]) * share;
    }

    /**
     * A stroke, bent like the ply round the yarn; it leans the same whichever way the yarn runs.
     *
     * @param half how far it reaches to either side; below 0 it leans the other way
     */
    static void mark(Path2D strokes, double x, double y, double ux, double uy, double half) {
        double along = 0.85 * Math.abs(half);
        double fromX = x - ux * along - uy * half;
        double fromY = y - uy * along + ux * half;
        double toX = x + ux * along + uy * half;
        double toY = y + uy * along - ux * half;
        double bend = 0.5 * along;
        strokes.moveTo(fromX, fromY);
        strokes.curveTo(fromX + ux * bend, fromY + uy * bend, toX - ux * bend, toY - uy * bend, toX, toY);
    }
}
