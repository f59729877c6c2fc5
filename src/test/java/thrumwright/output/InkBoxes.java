package thrumwright.output;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;

/**
 * A canvas that keeps only where things lie: the ink of every text by the font's own glyphs, boxes to tick, and figures.
 * What is in a figure is left out.
 */
final class InkBoxes extends AbstractGraphics2D implements Structured {
    /** What may lie where. */
    enum Kind {
        TEXT,
        TICK,
        FIGURE
    }

    /** Something on a page, points. */
    record Ink(Kind kind, String what, Rectangle2D box) {}

    private static final double LARGEST_TICK = 60;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final float UNIT = 1000;
    private static final Map<String, Map<Integer, Glyph>> GLYPHS = new HashMap<>();

    /** Ink and advance of a letter of type size {@link #UNIT}. */
    private record Glyph(Rectangle2D ink, double advance) {}

    private final List<Ink> inks = new ArrayList<>();

    InkBoxes() {
        super(false);
        gc = new GraphicContext();
    }

    List<Ink> inks() {
        return inks;
    }

    @Override
    public void as(Role role, Runnable paint) {
        paint.run();
    }

    @Override
    public void figure(String alternative, Rectangle2D box, Runnable paint) {
        inks.add(new Ink(Kind.FIGURE, alternative, box));
    }

    @Override
    public void spell(String text) {
        // only seen here
    }

    @Override
    public void drawString(String text, float x, float y) {
        Font font = getFont();
        double scale = font.getSize2D() / UNIT;
        Rectangle2D all = null;
        double at = x;
        for (int letter : text.codePoints().toArray()) {
            Glyph glyph = glyph(font, letter);
            if (!glyph.ink().isEmpty()) {
                Rectangle2D ink = new Rectangle2D.Double(
                        at + glyph.ink().getX() * scale,
                        y + glyph.ink().getY() * scale,
                        glyph.ink().getWidth() * scale,
                        glyph.ink().getHeight() * scale);
                all = all == null ? ink : all.createUnion(ink);
            }
            at += glyph.advance() * scale;
        }
        if (all != null) {
            // what lies on its side is met where it is seen
            Rectangle2D seen = getTransform().createTransformedShape(all).getBounds2D();
            inks.add(new Ink(Kind.TEXT, text, seen));
        }
    }

    private static Glyph glyph(Font font, int letter) {
        return GLYPHS.computeIfAbsent(font.getFontName(), name -> new HashMap<>())
                .computeIfAbsent(letter, fresh -> {
                    GlyphVector glyph = font.deriveFont(UNIT).createGlyphVector(EXACT, Character.toString(letter));
                    return new Glyph(
                            glyph.getVisualBounds(), glyph.getLogicalBounds().getWidth());
                });
    }

    @Override
    public void draw(Shape shape) {
        if (shape instanceof Rectangle2D box && box.getWidth() == box.getHeight() && box.getWidth() < LARGEST_TICK) {
            inks.add(new Ink(Kind.TICK, "a box to tick", box));
        }
    }

    @Override
    public void fill(Shape shape) {
        // colours lie behind
    }

    @Override
    public Graphics create() {
        throw new UnsupportedOperationException();
    }

    @Override
    public void dispose() {
        // nothing is held
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return null;
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void setXORMode(java.awt.Color colour) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform transform) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform transform) {
        throw new UnsupportedOperationException();
    }
}
