package thrumwright.editor.canvas.painted;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.GraphicsDevice;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Draws long upright lines and the outlines of large boxes with smoothed edges. Where the screen has a memory of its own, Java
 * would send a mask there for every 32 pixels of a line; there the same is done by fills of whole device pixels, those
 * that are covered in part letting through what lies below.
 */
final class LongLines {
    /** Java counts by so many samples of a pixel how much of it is covered: across, and down. */
    private static final int ACROSS = 256;

    private static final int DOWN = 8;

    /** Where lines lie within a device pixel, so that those of one thickness look alike. */
    private static final double MIDDLE = 0.499;

    /** Transforms that leave upright what is upright. */
    private static final int WHOLE =
            AffineTransform.TYPE_TRANSLATION | AffineTransform.TYPE_UNIFORM_SCALE | AffineTransform.TYPE_GENERAL_SCALE;

    /** Nothing is painted farther away, device pixels. */
    private static final double FARTHEST = 1e6;

    private final Graphics2D device;
    private final AffineTransform to;

    private LongLines(Graphics2D g) {
        to = g.getTransform();
        device = (Graphics2D) g.create();
        device.setTransform(new AffineTransform());
        device.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    }

    /**
     * Some pixels of a row or a column, all covered alike.
     *
     * @param share how much of each a box covers, 0–1
     * @param within how much of that what is left free within it takes back, 0–1
     */
    private record Run(int at, int length, double share, double within) {}

    /** The outline of a box, in the colour that is set. */
    static void draw(Graphics2D g, Rectangle2D box, double thick) {
        if (sendsMasks(g)) {
            byFills(g, box, thick);
        } else {
            g.setStroke(new BasicStroke((float) thick));
            g.draw(box);
        }
    }

    static void byFills(Graphics2D g, Rectangle2D box, double thick) {
        LongLines lines = new LongLines(g);
        double wide = thick * lines.to.getScaleX() / 2;
        double high = thick * lines.to.getScaleY() / 2;
        double left = middle(lines.x(box.getMinX()));
        double right = middle(lines.x(box.getMaxX()));
        double top = middle(lines.y(box.getMinY()));
        double bottom = middle(lines.y(box.getMaxY()));
        lines.fill(
                runs(ACROSS, left - wide, left + wide, right - wide, right + wide),
                runs(DOWN, top - high, top + high, bottom - high, bottom + high));
    }

    /** An upright line without ends of its own, in the colour that is set. */
    static void upright(Graphics2D g, double x, double from, double to, double thick) {
        if (sendsMasks(g)) {
            uprightByFills(g, x, from, to, thick);
        } else {
            g.setStroke(new BasicStroke((float) thick));
            g.draw(new Line2D.Double(x, from, x, to));
        }
    }

    /** A box that is no wider than its own outline. */
    static void uprightByFills(Graphics2D g, double x, double from, double to, double thick) {
        byFills(g, new Rectangle2D.Double(x, Math.min(from, to), 0, Math.abs(to - from)), thick);
    }

    /** Whether what is drawn with smoothed edges goes to a memory of the screen's, in masks. */
    private static boolean sendsMasks(Graphics2D g) {
        int device = g.getDeviceConfiguration().getDevice().getType();
        return device == GraphicsDevice.TYPE_RASTER_SCREEN && (g.getTransform().getType() & ~WHOLE) == 0;
    }

    private double x(double x) {
        return x * to.getScaleX() + to.getTranslateX();
    }

    private double y(double y) {
        return y * to.getScaleY() + to.getTranslateY();
    }

    private static double middle(double place) {
        return Math.floor(place + 0.5 - MIDDLE) + MIDDLE;
    }

    /**
     * The pixels from one place to another, with what is left free between two others, all in their order.
     *
     * @param samples of a pixel
     */
    private static List<Run> runs(int samples, double from, double free, double again, double to) {
        int[] at = {sample(samples, from), sample(samples, free), sample(samples, again), sample(samples, to)};
        TreeSet<Integer> edges = new TreeSet<>();
        for (int each : at) {
            edges.add(Math.floorDiv(each, samples));
            edges.add(-Math.floorDiv(-each, samples));
        }
        List<Run> runs = new ArrayList<>();
        for (Integer edge = edges.first(); edges.higher(edge) != null; edge = edges.higher(edge)) {
            int pixel = edge * samples;
            runs.add(new Run(
                    edge,
                    edges.higher(edge) - edge,
                    covered(pixel, samples, at[0], at[3]),
                    covered(pixel, samples, at[1], at[2])));
        }
        return runs;
    }

    private static int sample(int samples, double place) {
        return (int) Math.ceil(Math.max(-FARTHEST, Math.min(place, FARTHEST)) * samples - 0.5);
    }

    private static double covered(int pixel, int samples, int from, int to) {
        return Math.max(0, Math.min(pixel + samples, to) - Math.max(pixel, from)) / (double) samples;
    }

    private void fill(List<Run> across, List<Run> down) {
        Color colour = device.getColor();
        for (Run row : down) {
            for (Run column : across) {
                double covered = column.share() * row.share() - column.within() * row.within();
                int alpha = (int) Math.round(covered * colour.getAlpha());
                if (alpha > 0) {
                    device.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha));
                    device.fillRect(column.at(), row.at(), column.length(), row.length());
                }
            }
        }
        device.dispose();
    }
}
