package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The way of a hand, as an arrow with a number at its beginning: a whole line where it goes in front, a dashed one where it
 * goes behind.
 *
 * @param font of the number; null for none
 * @param size half the width of the arrow's head, page units, more than 0
 */
public record HandWay(Graphics2D g, Palette palette, Font font, double size) {
    /** A number's disc and its figure, in sizes. */
    private static final double DISC = 1.9;

    private static final double FIGURE = 2.8;
    /** A part of the way, page units; {@code hidden} behind something. */
    public record Bit(double[] x, double[] y, boolean hidden) {
        Path2D line() {
            Path2D line = new Path2D.Double();
            line.moveTo(x[0], y[0]);
            for (int i = 1; i < x.length; i++) {
                line.lineTo(x[i], y[i]);
            }
            return line;
        }
    }

    /** An arrow for a size of box: large enough that its number can be read. */
    public static HandWay in(Rectangle2D box, Graphics2D g, Palette palette, Font font) {
        return new HandWay(g, palette, font, Math.max(2.2, 0.026 * Math.min(box.getHeight(), 0.66 * box.getWidth())));
    }

    /** What a number takes along the way, before the arrow begins: page units, more than 0. */
    public double room() {
        return 2 * DISC * size;
    }

    /** Along those parts, in order, to the end of the last. */
    public void along(List<Bit> parts, int number) {
        if (parts.isEmpty()) {
            return;
        }
        Bit last = parts.get(parts.size() - 1);
        stroke(parts, last, 1.5, palette.paper());
        stroke(parts, last, 0.62, palette.ink());
        before(parts.get(0), number);
    }

    /** Just before the way begins, so that it covers nothing of it. */
    private void before(Bit first, int number) {
        int next = 1;
        while (next < first.x().length - 1 && between(first, 0, next) < DISC * size) {
            next++;
        }
        double long_ = Math.max(1e-9, between(first, 0, next));
        double back = DISC * size / long_;
        number(
                first.x()[0] - back * (first.x()[next] - first.x()[0]),
                first.y()[0] - back * (first.y()[next] - first.y()[0]),
                number);
    }

    /** Straight from one place to another, page units, any. */
    public void straight(double fromX, double fromY, double toX, double toY, int number) {
        along(List.of(new Bit(new double[] {fromX, toX}, new double[] {fromY, toY}, false)), number);
    }

    private void stroke(List<Bit> parts, Bit last, double width, Color colour) {
        g.setColor(colour);
        for (Bit part : parts) {
            g.setStroke(pen(width, part.hidden()));
            g.draw(part.line());
        }
        g.setStroke(pen(width, false));
        g.draw(head(last));
    }

    private BasicStroke pen(double width, boolean dashed) {
        float[] dashes = dashed ? new float[] {(float) (1.3 * size), (float) (1.5 * size)} : null;
        return new BasicStroke((float) (width * size), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, dashes, 0);
    }

    private Path2D head(Bit last) {
        int end = last.x().length - 1;
        int before = end - 1;
        // the direction of the last bit that is long enough to have one
        while (before > 0 && between(last, before, end) < 2 * size) {
            before--;
        }
        double along = Math.max(1e-9, between(last, before, end)) / size;
        double dx = (last.x()[end] - last.x()[before]) / along;
        double dy = (last.y()[end] - last.y()[before]) / along;
        return tip(last.x()[end], last.y()[end], dx, dy);
    }

    private static Path2D tip(double x, double y, double dx, double dy) {
        Path2D head = new Path2D.Double();
        head.moveTo(x - 1.5 * dx + 1.2 * dy, y - 1.5 * dy - 1.2 * dx);
        head.lineTo(x, y);
        head.lineTo(x - 1.5 * dx - 1.2 * dy, y - 1.5 * dy + 1.2 * dx);
        return head;
    }

    private static double between(Bit way, int from, int to) {
        return Math.hypot(way.x()[to] - way.x()[from], way.y()[to] - way.y()[from]);
    }

    /** A number on a disc with its middle at a place, page units, any; 0 for none. */
    public void number(double x, double y, int number) {
        if (font != null && number > 0) {
            Font figure = font.deriveFont((float) (FIGURE * size));
            UprightText.draw(g, figure, Integer.toString(number), x, y, wide -> disc(DISC * size));
        }
    }

    private void disc(double radius) {
        Ellipse2D disc = new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
        g.setColor(palette.paper());
        g.fill(disc);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke((float) (0.4 * size)));
        g.draw(disc);
    }
}
