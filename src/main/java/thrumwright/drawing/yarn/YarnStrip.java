package thrumwright.drawing.yarn;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import thrumwright.drawing.View;

/**
 * A part of a block's yarn as a picture, to be put down wherever it is wanted; for a screen on which single yarns are
 * small. Where they are too small to be drawn, they are drawn larger and every few pixels become one, so that the cloth
 * looks as it would from farther away.
 *
 * @param image with a clear ground
 * @param left where its left edge lies on the block, device pixels from the first warp end
 * @param top where its upper edge lies, device pixels from the block's lower edge
 */
public record YarnStrip(BufferedImage image, int left, int top) {
    /** A strip is drawn for so many places of a block's lower edge between two pixels. */
    static final int PHASES = 8;

    /** Warp ends are drawn at least so many pixels apart. */
    private static final double DRAWN_APART = 3;

    /** At most so many pixels a side become one. */
    private static final int MOST = 12;

    /**
     * What a strip shows.
     *
     * @param part which warp ends, counted on the narrow warp
     * @param rows which rows, counted among the fewer ones
     * @param face the side from which it is seen
     * @param near whether it is the yarn towards the eye
     * @param dots device pixels per mm
     * @param phase how far, in {@link #PHASES}ths of a pixel, the block's lower edge lies below the border of a pixel
     */
    record Key(
            Repetition.Slab part,
            Repetition.Slab rows,
            Face face,
            boolean near,
            Color colour,
            double dots,
            int phase) {}

    /** Draws the yarn. */
    @FunctionalInterface
    interface Pen {
        void draw(Graphics2D g, View view);
    }

    /** @param whole all that the block's yarn may reach, mm from the first warp end and up from the lower edge */
    static YarnStrip of(Key key, Rectangle2D whole, double spacing, double rowHeight, Pen pen) {
        int times = (int) Math.max(1, Math.min(MOST, Math.ceil(DRAWN_APART / (spacing * key.dots()))));
        int left = (int) Math.floor(Math.max(key.part().left(spacing), whole.getMinX()) * key.dots());
        int right = (int) Math.ceil(Math.min(key.part().right(spacing), whole.getMaxX()) * key.dots()) + 1;
        int top = (int) Math.floor(-Math.min(key.rows().high(rowHeight), whole.getMaxY()) * key.dots());
        int bottom = (int) Math.ceil(-Math.max(key.rows().low(rowHeight), whole.getMinY()) * key.dots()) + 2;
        BufferedImage large = new BufferedImage(
                times * Math.max(1, right - left), times * Math.max(1, bottom - top), BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = large.createGraphics();
        g.setClip(0, 0, large.getWidth(), large.getHeight());
        double exact = times * key.dots();
        pen.draw(g, new View(exact, -times * left, times * ((double) key.phase() / PHASES - top)));
        g.dispose();
        return new YarnStrip(times == 1 ? large : smaller(large, times), left, top);
    }

    /** Every so many pixels a side become one. */
    private static BufferedImage smaller(BufferedImage large, int times) {
        int width = large.getWidth() / times;
        int height = large.getHeight() / times;
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        int[] from = ((DataBufferInt) large.getRaster().getDataBuffer()).getData();
        int[] to = ((DataBufferInt) small.getRaster().getDataBuffer()).getData();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                to[y * width + x] = mean(from, large.getWidth(), x * times, y * times, times);
            }
        }
        return small;
    }

    private static int mean(int[] pixels, int width, int left, int top, int times) {
        int alpha = 0;
        int red = 0;
        int green = 0;
        int blue = 0;
        for (int y = top; y < top + times; y++) {
            for (int x = left; x < left + times; x++) {
                int pixel = pixels[y * width + x];
                alpha += pixel >>> 24;
                red += pixel >> 16 & 0xff;
                green += pixel >> 8 & 0xff;
                blue += pixel & 0xff;
            }
        }
        int all = times * times;
        return alpha / all << 24 | red / all << 16 | green / all << 8 | blue / all;
    }
}
