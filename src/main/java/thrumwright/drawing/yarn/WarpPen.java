package thrumwright.drawing.yarn;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/** Draws warp ends as upright cords. */
public record WarpPen(Graphics2D g, View view, Color colour, int plies, Face face) {
    /** From so many page units an end is thick enough to show its light, and its ply. */
    private static final double LIGHT_FROM = 2;

    private static final double PLY_FROM = 4.5;

    /** Ends that stand closer than that, page units, aren't told apart: half a point is 0.2 mm. */
    private static final double SINGLE_FROM = 0.5;

    /**
     * Ends from one height to another, all lengths in mm.
     *
     * @param spacing from one end to the next, more than 0
     * @param diameter of an end, more than 0
     * @param first number of the leftmost end to draw, from 0
     * @param last number of the last
     */
    public void draw(double spacing, double diameter, int first, int last, double fromY, double toY) {
        double width = view.length(diameter);
        if (view.length(spacing) < SINGLE_FROM) {
            cover(new Standing(spacing, width, first, last, fromY, toY), Math.min(1, diameter / spacing));
            return;
        }
        double rim = Math.min(0.14, 0.8 / width + 0.02);
        Standing ends = new Standing(spacing, width, first, last, fromY, toY);
        bars(ends, -0.5, 0.5, Palette.mixed(colour, Color.BLACK, 0.46));
        bars(ends, rim - 0.5, 0.5 - rim, Palette.mixed(colour, Color.BLACK, 0.05));
        if (width >= LIGHT_FROM) {
            bars(ends, -0.30, 0.16, Palette.mixed(colour, Color.WHITE, 0.25));
        }
        if (width >= PLY_FROM) {
            ply(ends);
        }
    }

    /** All ends in one, paler where there is more between them. */
    private void cover(Standing ends, double share) {
        double left = view.x((ends.first() - 0.5) * ends.spacing());
        double right = view.x((ends.last() + 0.5) * ends.spacing());
        double top = view.y(ends.toY());
        g.setColor(Palette.mixed(Color.WHITE, Palette.mixed(colour, Color.BLACK, 0.2), share));
        g.fill(new Rectangle2D.Double(left, top, right - left, view.y(ends.fromY()) - top));
    }

    /** Neighbouring ends, from one height to another; {@code width} in page units. */
    private record Standing(double spacing, double width, int first, int last, double fromY, double toY) {}

    /** On every end from one place across it to another, as shares of their thickness from the middle. */
    private void bars(Standing ends, double left, double right, Color shade) {
        g.setColor(shade);
        double width = ends.width();
        double top = view.y(ends.toY());
        double high = view.y(ends.fromY()) - top;
        for (int end = ends.first(); end <= ends.last(); end++) {
            double x = view.x(end * ends.spacing());
            g.fill(new Rectangle2D.Double(x + left * width, top, (right - left) * width, high));
        }
    }

    private void ply(Standing ends) {
        Path2D marks = new Path2D.Double();
        double width = ends.width();
        double half = width * 0.36;
        double apart = PlyMarks.apart(width, plies);
        // counted from one height of the cloth, so that marks keep their place when the view moves
        long lowest = (long) Math.ceil((ends.fromY() * view.scale() + half) / apart);
        long highest = (long) Math.floor((ends.toY() * view.scale() - half) / apart);
        for (int end = ends.first(); end <= ends.last(); end++) {
            for (long i = lowest; i <= highest; i++) {
                PlyMarks.mark(marks, view.x(end * ends.spacing()), view.base() - i * apart, 0, 1, face.slant() * half);
            }
        }
        g.setColor(Palette.mixed(colour, Color.BLACK, 0.2));
        g.setStroke(new BasicStroke((float) (width * 0.055), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(marks);
    }
}
