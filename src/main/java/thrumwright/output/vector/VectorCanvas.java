package thrumwright.output.vector;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/**
 * A canvas that keeps shapes, lines and letters in plain colours, which is all that sheets are made of. It refuses
 * pictures.
 */
public abstract class VectorCanvas extends AbstractGraphics2D {
    private static final double ALIKE = 1e-6;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private final AffineTransform upright;
    /** What can be painted on, as the page counts; null if all can. */
    private Shape within;

    /** @param upright from the canvas to the page */
    protected VectorCanvas(AffineTransform upright) {
        super(false);
        this.gc = new GraphicContext();
        this.upright = upright;
    }

    /** One that is as another is now. */
    protected VectorCanvas(VectorCanvas other) {
        super(other);
        this.upright = other.upright;
        this.within = other.within;
    }

    /** Keeps an area. */
    protected abstract void filled(Shape shape, AffineTransform toPage);

    /**
     * Keeps a line.
     *
     * @param scale page units to one unit of the pen, more than 0
     */
    protected abstract void drawn(Shape shape, AffineTransform toPage, BasicStroke pen, double scale);

    @Override
    public void dispose() {
        // nothing is held
    }

    /** From what is painted now to the page. */
    protected AffineTransform toPage() {
        AffineTransform toPage = new AffineTransform(upright);
        toPage.concatenate(getTransform());
        return toPage;
    }

    /** What can be painted on, as the page counts; null if all can. */
    protected Shape within() {
        return within;
    }

    @Override
    public void fill(Shape shape) {
        filled(shape, toPage());
    }

    @Override
    public void draw(Shape shape) {
        AffineTransform toPage = toPage();
        double across = Math.hypot(toPage.getScaleX(), toPage.getShearY());
        double down = Math.hypot(toPage.getShearX(), toPage.getScaleY());
        boolean alike = Math.abs(across - down) < ALIKE * across;
        if (alike && getStroke() instanceof BasicStroke pen) {
            drawn(shape, toPage, pen, across);
        } else {
            fill(getStroke().createStrokedShape(shape));
        }
    }

    /** The shapes of letters. */
    protected static Shape letters(Font font, String text, float x, float y) {
        return font.createGlyphVector(EXACT, text).getOutline(x, y);
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
