package thrumwright.editor.canvas.cloth;

import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePainter;
import thrumwright.drawing.piece.PiecePicture;

/**
 * A cloth as it is shown on a screen, wherever it lies there. Places on it are device pixels from the point where the
 * first warp end meets the start's lowest line, with y down.
 *
 * @param scale canvas pixels per mm
 * @param density device pixels per canvas pixel, more than 0
 */
public record ClothScene(PiecePicture picture, Palette palette, double scale, double density) {
    /** Warp and posts go on so far beyond the picture, mm: beyond any window. */
    private static final double BARE = 20_000;

    /** Whether it is the same cloth in the same colours, perhaps in another size. */
    boolean sameCloth(ClothScene other) {
        return picture == other.picture && palette.equals(other.palette);
    }

    boolean same(ClothScene other) {
        return sameCloth(other) && scale == other.scale && density == other.density;
    }

    /** Device pixels per mm. */
    double dots() {
        return scale * density;
    }

    /**
     * Paints a part of it. May be called on any thread.
     *
     * @param screen what the picture is for; null for none
     */
    BufferedImage paint(Rectangle part, GraphicsConfiguration screen) {
        BufferedImage image = screen == null
                ? new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB)
                : screen.createCompatibleImage(part.width, part.height);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(palette.paper());
            g.fillRect(0, 0, part.width, part.height);
            g.translate(-part.x, -part.y);
            g.clip(part);
            g.scale(density, density);
            paint(g, new View(scale, 0, 0));
        } finally {
            g.dispose();
        }
        return image;
    }

    /** Paints as much of it as the clip lets through. */
    public void paint(Graphics2D g, View view) {
        new PiecePainter(g, palette, false).piece(view, picture, BARE);
    }

    /** The cloth as a whole, in a picture with at most so many pixels along either side. */
    ClothScene small(int most) {
        double width = picture.span() + 2 * picture.margin();
        return new ClothScene(picture, palette, most / Math.max(width, picture.height()), 1);
    }

    /** Where the whole cloth lies. */
    Rectangle whole() {
        int left = (int) Math.floor(-picture.margin() * dots());
        int width = (int) Math.ceil((picture.span() + 2 * picture.margin()) * dots());
        int height = (int) Math.ceil(picture.height() * dots());
        return new Rectangle(left, -height, width + 1, height + 1);
    }
}
