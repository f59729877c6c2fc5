package thrumwright.output.pdf;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.AttributedCharacterIterator;
import java.util.Optional;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;

/**
 * A page of a PDF as a canvas: shapes, lines and letters in plain colours, which is all that sheets are made of. It
 * refuses pictures.
 */
final class PdfCanvas extends AbstractGraphics2D implements Structured {
    private static final double ALIKE = 1e-6;

    private final PdfContent content;
    private final PdfMarks marks;
    private final PdfFonts fonts;
    private final AffineTransform upright;
    /** What can be painted on, as the page counts; null if all can. */
    private Shape within;

    /** @param height of the page, points */
    PdfCanvas(PdfContent content, PdfMarks marks, PdfFonts fonts, double height) {
        super(false);
        this.gc = new GraphicContext();
        this.content = content;
        this.marks = marks;
        this.fonts = fonts;
        this.upright = new AffineTransform(1, 0, 0, -1, 0, height);
    }

    private PdfCanvas(PdfCanvas other) {
        super(other);
        this.content = other.content;
        this.marks = other.marks;
        this.fonts = other.fonts;
        this.upright = other.upright;
        this.within = other.within;
    }

    @Override
    public Graphics create() {
        return new PdfCanvas(this);
    }

    @Override
    public void dispose() {
        // nothing is held
    }

    @Override
    public void as(Role role, Runnable paint) {
        marks.as(role, paint);
    }

    @Override
    public void figure(String alternative, Rectangle2D box, Runnable paint) {
        marks.figure(alternative, box, paint);
    }

    @Override
    public void spell(String text) {
        marks.spell(text);
    }

    private AffineTransform toPage() {
        AffineTransform toPage = new AffineTransform(upright);
        toPage.concatenate(getTransform());
        return toPage;
    }

    @Override
    public void fill(Shape shape) {
        try {
            content.fill(shape, toPage(), getColor(), within);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void draw(Shape shape) {
        AffineTransform toPage = toPage();
        double across = Math.hypot(toPage.getScaleX(), toPage.getShearY());
        double down = Math.hypot(toPage.getShearX(), toPage.getScaleY());
        boolean alike = Math.abs(across - down) < ALIKE * across;
        if (!(alike && getStroke() instanceof BasicStroke)) {
            fill(getStroke().createStrokedShape(shape));
            return;
        }
        try {
            content.draw(shape, toPage, getColor(), (BasicStroke) getStroke(), across, within);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void drawString(String text, float x, float y) {
        Font font = getFont();
        Optional<byte[]> codes = fonts.codes(font, text);
        if (codes.isEmpty()) {
            // letters that the font lacks
            FontRenderContext exact = new FontRenderContext(null, true, true);
            fill(font.createGlyphVector(exact, text).getOutline(x, y));
            return;
        }
        AffineTransform toPage = toPage();
        toPage.translate(x, y);
        toPage.scale(1, -1);
        content.text(codes.get(), toPage, fonts.name(font), font.getSize2D(), getColor(), within);
    }

    @Override
    public void clip(Shape shape) {
        super.clip(shape);
        clipped();
    }

    @Override
    public void setClip(Shape shape) {
        super.setClip(shape);
        clipped();
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        clip(new Rectangle2D.Double(x, y, width, height));
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        setClip(new Rectangle2D.Double(x, y, width, height));
    }

    private void clipped() {
        Shape clip = getClip();
        within = clip == null ? null : toPage().createTransformedShape(clip);
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return null;
    }

    private static UnsupportedOperationException unused(String what) {
        return new UnsupportedOperationException("sheets are drawn without " + what);
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        throw unused("whole units");
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        throw unused("mixed text");
    }

    @Override
    public void setXORMode(java.awt.Color colour) {
        throw unused("inverted colours");
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw unused("copies");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw unused("pictures");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw unused("pictures");
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform transform) {
        throw unused("pictures");
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform transform) {
        throw unused("pictures");
    }
}
