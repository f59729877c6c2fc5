package thrumwright.output.page;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;

/** Paints laid-out pages as pictures. */
public final class PngFile {
    private PngFile() {}

    /**
     * One page as a picture.
     *
     * @param dpi dots per inch (25.4 mm), from 20 to 1200
     */
    public static BufferedImage picture(SheetPages pages, int page, double dpi) {
        double scale = dpi / 72;
        int width = (int) Math.round(pages.setup().width() * scale);
        int height = (int) Math.round(pages.setup().height() * scale);
        return picture(pages, page, scale, new Rectangle(width, height));
    }

    /**
     * A part of a page as a picture.
     *
     * @param scale dots per point, more than 0
     * @param part of the page so scaled, dots
     */
    public static BufferedImage picture(SheetPages pages, int page, double scale, Rectangle part) {
        BufferedImage image = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        smooth(g);
        g.translate(-part.x, -part.y);
        g.scale(scale, scale);
        pages.paint(g, page);
        g.dispose();
        return image;
    }

    /** Lines and letters as fine as the dots allow. */
    public static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    /** @throws IOException if it can't be written to */
    public static void write(BufferedImage image, OutputStream out) throws IOException {
        if (!ImageIO.write(image, "png", out)) {
            throw new IOException("this Java can't write PNG");
        }
    }
}
