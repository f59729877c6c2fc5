package thrumwright.output.pdf;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.vector.VectorCanvas;

/** A page of a PDF as a canvas. */
final class PdfCanvas extends VectorCanvas implements Structured {
    private final PdfContent content;
    private final PdfMarks marks;
    private final PdfFonts fonts;

    /** @param height of the page, points */
    PdfCanvas(PdfContent content, PdfMarks marks, PdfFonts fonts, double height) {
        super(new AffineTransform(1, 0, 0, -1, 0, height));
        this.content = content;
        this.marks = marks;
        this.fonts = fonts;
    }

    private PdfCanvas(PdfCanvas other) {
        super(other);
        this.content = other.content;
        this.marks = other.marks;
        this.fonts = other.fonts;
    }

    @Override
    public Graphics create() {
        return new PdfCanvas(this);
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

    @Override
    protected void filled(Shape shape, AffineTransform toPage) {
        try {
            content.fill(shape, toPage, getColor(), within());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    protected void drawn(Shape shape, AffineTransform toPage, BasicStroke pen, double scale) {
        try {
            content.draw(shape, toPage, getColor(), pen, scale, within());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void drawString(String text, float x, float y) {
        Font font = getFont();
        marks.written(
                text,
                toPage().transform(new Point2D.Double(x, y - font.getSize2D()), null)
                        .getY());
        Optional<byte[]> codes = fonts.codes(font, text);
        if (codes.isEmpty()) {
            // letters that the font lacks
            fill(letters(font, text, x, y));
            return;
        }
        AffineTransform toPage = toPage();
        toPage.translate(x, y);
        toPage.scale(1, -1);
        content.text(codes.get(), toPage, fonts.name(font), font.getSize2D(), getColor(), within());
    }
}
