package thrumwright.drawing.loom;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.cord.PathSection;
import thrumwright.cord.Visit;
import thrumwright.drawing.Arrow;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/** Paints the way of a warp: bars or pegs, the yarn that is led round them, and arrows the way it goes. */
public record WarpWayPainter(Graphics2D g, Palette palette, Color yarn) {
    private static final int STEPS = 24;
    private static final double AROUND = 4;
    /** How deep a notch is, and half of how wide it opens, in the units of the way. */
    private static final double DEEP = 11;

    private static final double OPEN = 3.5;

    /** What it takes up, in the units of the way. */
    public static Rectangle2D extent(WarpWay way) {
        Rectangle2D all = null;
        for (Visit peg : way.pegs()) {
            Rectangle2D one = circle(peg, peg.radius() + AROUND).getBounds2D();
            all = all == null ? one : all.createUnion(one);
        }
        for (WarpWay.NotchedBoard board : way.boards()) {
            Rectangle2D one =
                    new Rectangle2D.Double(board.left(), board.bottom() - DEEP, board.right() - board.left(), 2 * DEEP);
            all = all == null ? one : all.createUnion(one);
        }
        return all;
    }

    private static Ellipse2D circle(Visit peg, double radius) {
        return new Ellipse2D.Double(peg.x() - radius, peg.z() - radius, 2 * radius, 2 * radius);
    }

    /** As large as a place on the page allows, in its middle; page units, all more than 0. */
    public static View fitted(WarpWay way, double x, double y, double width, double height) {
        Rectangle2D extent = extent(way);
        double scale = Math.min(width / extent.getWidth(), height / extent.getHeight());
        double left = x + (width - scale * extent.getWidth()) / 2 - scale * extent.getMinX();
        double base = y + height - (height - scale * extent.getHeight()) / 2 + scale * extent.getMinY();
        return new View(scale, left, base);
    }

    /** @param size half the width of an arrow's head, page units, 0 or more; 0 for no arrows */
    public void paint(WarpWay way, View view, double size) {
        way.pegs().forEach(peg -> peg(peg, view));
        cord(path(way.cord().sections(), view), view);
        if (!way.boards().isEmpty()) {
            way.boards().forEach(board -> board(board, view));
            way.cord().sections().stream()
                    .filter(PathSection.Run.class::isInstance)
                    .forEach(run -> cord(path(List.of(run), view), view));
        }
        if (size > 0) {
            way.cord().sections().stream()
                    .filter(PathSection.Run.class::isInstance)
                    .forEach(run -> arrow(run, view, size));
        }
    }

    private void cord(Path2D path, View view) {
        double thick = view.length(1.6);
        stroke(path, palette.ink(), thick + 0.8);
        stroke(path, yarn, thick);
    }

    /** The edge with the notches, then straight back. */
    private void board(WarpWay.NotchedBoard board, View view) {
        double edge = board.bottom() + board.up() * DEEP;
        Path2D outline = new Path2D.Double();
        outline.moveTo(view.x(board.left()), view.y(edge));
        for (double at : board.notches()) {
            outline.lineTo(view.x(at - OPEN), view.y(edge));
            outline.lineTo(view.x(at), view.y(board.bottom()));
            outline.lineTo(view.x(at + OPEN), view.y(edge));
        }
        outline.lineTo(view.x(board.right()), view.y(edge));
        outline.lineTo(view.x(board.right()), view.y(board.bottom() - board.up() * DEEP));
        outline.lineTo(view.x(board.left()), view.y(board.bottom() - board.up() * DEEP));
        outline.closePath();
        fill(outline, view);
    }

    private void fill(Shape shape, View view) {
        g.setColor(palette.post());
        g.fill(shape);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke((float) Math.max(0.5, view.length(0.4))));
        g.draw(shape);
    }

    private void peg(Visit peg, View view) {
        double radius = Math.max(0.5, peg.radius() - 0.8);
        Ellipse2D round = new Ellipse2D.Double(
                view.x(peg.x() - radius), view.y(peg.z() + radius), view.length(2 * radius), view.length(2 * radius));
        fill(round, view);
    }

    private static Path2D path(List<? extends PathSection> sections, View view) {
        Path2D path = new Path2D.Double();
        for (PathSection section : sections) {
            int steps = section instanceof PathSection.Arc ? STEPS : 1;
            for (int i = 0; i <= steps; i++) {
                PathSection.Spot spot = section.at((double) i / steps);
                if (path.getCurrentPoint() == null) {
                    path.moveTo(view.x(spot.x()), view.y(spot.z()));
                } else {
                    path.lineTo(view.x(spot.x()), view.y(spot.z()));
                }
            }
        }
        return path;
    }

    private void stroke(Path2D path, Color colour, double thick) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    private void arrow(PathSection run, View view, double size) {
        PathSection.Spot from = run.at(0.62);
        PathSection.Spot to = run.at(0.78);
        new Arrow(g, palette).straight(view.x(from.x()), view.y(from.z()), view.x(to.x()), view.y(to.z()), size);
    }
}
