package thrumwright.editor.canvas.cloth;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import thrumwright.drawing.Palette;
import thrumwright.editor.canvas.seen.Axis;

/** Draws where something is left out: two wavy edges with nothing between them, as in drawings of long things. */
record BreakPainter(Graphics2D g, Palette palette) {
    /** From one crest of the edge to the next, and how high it is, pixels. */
    private static final double WAVE = 18;

    private static final double HIGH = 2.5;

    /** How much of the paper is in the colour of the edges. */
    private static final double PALE = 0.35;

    /** Across the picture, from one place to another: pixels. */
    void level(Axis.Gap gap, double from, double to) {
        Rectangle clip = g.getClipBounds();
        draw(gap, Math.max(from, clip.getMinX() - WAVE), Math.min(to, clip.getMaxX() + WAVE), from, false);
    }

    /** Up the picture. */
    void upright(Axis.Gap gap, double from, double to) {
        Rectangle clip = g.getClipBounds();
        draw(gap, Math.max(from, clip.getMinY() - WAVE), Math.min(to, clip.getMaxY() + WAVE), from, true);
    }

    /** @param origin where waves are counted from */
    private void draw(Axis.Gap gap, double low, double high, double origin, boolean upright) {
        if (high <= low) {
            return;
        }
        double from = origin + Math.floor((low - origin) / WAVE) * WAVE;
        int waves = (int) Math.ceil((high - from) / WAVE);
        Path2D one = wave(from, waves, gap.from() + HIGH / 2);
        Path2D other = wave(from, waves, gap.to() - HIGH / 2);
        Path2D hole = new Path2D.Double(one);
        hole.append(backwards(from, waves, gap.to() - HIGH / 2), true);
        hole.closePath();
        if (upright) {
            AffineTransform swapped = new AffineTransform(0, 1, 1, 0, 0, 0);
            hole.transform(swapped);
            one.transform(swapped);
            other.transform(swapped);
        }
        g.setColor(palette.paper());
        g.fill(hole);
        g.setColor(Palette.mixed(palette.faint(), palette.paper(), PALE));
        g.setStroke(new BasicStroke(1));
        g.draw(one);
        g.draw(other);
    }

    private static Path2D wave(double from, int waves, double at) {
        Path2D line = new Path2D.Double();
        line.moveTo(from, at);
        for (int i = 0; i < waves; i++) {
            double x = from + i * WAVE;
            line.curveTo(x + WAVE / 3, at - 2 * HIGH, x + 2 * WAVE / 3, at + 2 * HIGH, x + WAVE, at);
        }
        return line;
    }

    private static Path2D backwards(double from, int waves, double at) {
        Path2D line = new Path2D.Double();
        line.moveTo(from + waves * WAVE, at);
        for (int i = waves - 1; i >= 0; i--) {
            double x = from + i * WAVE;
            line.curveTo(x + 2 * WAVE / 3, at + 2 * HIGH, x + WAVE / 3, at - 2 * HIGH, x, at);
        }
        return line;
    }
}
