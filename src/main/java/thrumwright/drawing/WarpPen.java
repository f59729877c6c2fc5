package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;

/** Draws warp ends as upright cords. */
final class WarpPen {
    private final Graphics2D g;
    private final View view;
    private final Color colour;

    WarpPen(Graphics2D g, View view, Color colour) {
        this.g = g;
        this.view = view;
        this.colour = colour;
    }

    /**
     * Ends from one height to another.
     *
     * @param first number of the first end to draw, from 0
     * @param last number of the last
     */
    void draw(double spacing, double diameter, int first, int last, double fromY, double toY) {
        Path2D bodies = new Path2D.Double();
        Path2D lights = new Path2D.Double();
        Path2D edges = new Path2D.Double();
        Path2D ply = new Path2D.Double();
        double width = view.length(diameter);
        double top = view.y(toY);
        double bottom = view.y(fromY);
        for (int end = first; end <= last; end++) {
            double x = view.x(end * spacing);
            bar(bodies, x - width / 2, x + width / 2, top, bottom);
            bar(lights, x - width * 0.22, x + width * 0.06, top, bottom);
            line(edges, x - width / 2, top, bottom);
            line(edges, x + width / 2, top, bottom);
            if (width >= 5) {
                ply(ply, x, width, top, bottom);
            }
        }
        g.setColor(colour);
        g.fill(bodies);
        if (width >= 5) {
            g.setColor(Palette.mixed(colour, Color.BLACK, 0.22));
            g.setStroke(new BasicStroke((float) (width * 0.06), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(ply);
        }
        if (width >= 2) {
            g.setColor(Palette.mixed(colour, Color.WHITE, 0.45));
            g.fill(lights);
        }
        if (width >= 1.2) {
            g.setColor(Palette.mixed(colour, Color.BLACK, 0.48));
            g.setStroke(new BasicStroke((float) Math.max(0.25, Math.min(1, width * 0.08))));
            g.draw(edges);
        }
    }

    private static void bar(Path2D path, double left, double right, double top, double bottom) {
        path.moveTo(left, top);
        path.lineTo(right, top);
        path.lineTo(right, bottom);
        path.lineTo(left, bottom);
        path.closePath();
    }

    private static void line(Path2D path, double x, double top, double bottom) {
        path.moveTo(x, top);
        path.lineTo(x, bottom);
    }

    private static void ply(Path2D path, double x, double width, double top, double bottom) {
        double half = width * 0.40;
        for (double y = top + half; y < bottom - half; y += width * 0.62) {
            path.moveTo(x - half, y + half * 0.55);
            path.lineTo(x + half, y - half * 0.55);
        }
    }
}
