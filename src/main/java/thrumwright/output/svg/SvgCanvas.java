package thrumwright.output.svg;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.vector.VectorCanvas;

/** A drawing in SVG as a canvas; in files letters become shapes, so that it looks the same where the font is missing. */
public final class SvgCanvas extends VectorCanvas implements Structured {
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    /** Attributes of the SVG element, for most lines are so. */
    public static final String USUAL = "stroke-linecap=\"round\" stroke-linejoin=\"round\"";

    private final SvgContent content;

    private SvgCanvas(SvgContent content) {
        super(new AffineTransform());
        this.content = content;
    }

    private SvgCanvas(SvgCanvas other) {
        super(other);
        this.content = other.content;
    }

    /**
     * What stands in an SVG element, one with the {@link #USUAL} attributes, for what is painted.
     *
     * @param width what is seen of it, units, more than 0
     * @param height the same
     */
    public static String painted(SvgSymbols symbols, double width, double height, Consumer<Graphics2D> painting) {
        SvgContent content = new SvgContent(symbols, new Rectangle2D.Double(0, 0, width, height));
        painting.accept(new SvgCanvas(content));
        return content.end();
    }

    @Override
    public Graphics create() {
        return new SvgCanvas(this);
    }

    @Override
    public void as(Role role, Runnable paint) {
        paint.run();
    }

    @Override
    public void spell(String text) {
        // its letters are seen
    }

    /** What is drawn elsewhere in the document is used. */
    @Override
    public void figure(String alternative, Rectangle2D box, Runnable paint) {
        Rectangle2D where = toPage().createTransformedShape(box).getBounds2D();
        if (!content.figure(alternative, where, within())) {
            paint.run();
        }
    }

    @Override
    protected void filled(Shape shape, AffineTransform toPage) {
        content.fill(shape, toPage, getColor(), within());
    }

    @Override
    protected void drawn(Shape shape, AffineTransform toPage, BasicStroke pen, double scale) {
        content.draw(shape, toPage, getColor(), pen, scale, within());
    }

    /** As text for a browser, which sets it as wide as it must be; else letter by letter, for letters come again. */
    @Override
    public void drawString(String text, float x, float y) {
        Font font = getFont();
        if (content.setsText()) {
            content.text(new SvgText(text, font, x, y), toPage(), getColor(), within());
            return;
        }
        GlyphVector letters = font.createGlyphVector(EXACT, text);
        for (int i = 0; i < letters.getNumGlyphs(); i++) {
            fill(letters.getGlyphOutline(i, x, y));
        }
    }
}
