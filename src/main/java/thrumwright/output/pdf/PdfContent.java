package thrumwright.output.pdf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.OptionalInt;
import java.util.Set;
import thrumwright.output.page.Role;

/**
 * What a page of a PDF paints (ISO 32000-1, 8 and 9.4). Colours, pens and clips are told only when they change, and only
 * once something is painted with them; points that fall together at the fineness of the file are told once.
 */
final class PdfContent {
    /** Painters may reach beyond a drawing's box, points. */
    private static final double[] ANYWHERE = {-3000, -3000, 3000, 3000};

    private final PdfForms forms;
    private final PdfRows rows;
    private final PdfLayer page = new PdfLayer();
    private final PdfLayer drawing = new PdfLayer();
    private PdfLayer layer = page;

    private Shape clip;
    /** What is being marked, and whether that has been told. */
    private Role role;

    private boolean told;

    PdfContent(PdfForms forms) {
        this.forms = forms;
        this.rows = new PdfRows(forms);
    }

    /** Begins a new page; what is painted on it is an ornament until it is marked. */
    void begin() {
        page.begin(0, 0);
        rows.outlines().forget();
        clip = null;
        role = Role.ORNAMENT;
        told = false;
    }

    /** Ends the page and gives all of it. */
    PdfBytes end() {
        endMark();
        return page.out();
    }

    /** Numbers of the forms that the page names. */
    Set<Integer> named() {
        return page.named();
    }

    /** Marks what follows as a stretch with this number. */
    void mark(Role as, int number) {
        endMark();
        page.out().add('/').add(as.type()).add("<</MCID ").add((long) number).add(">>BDC\n");
        role = as;
        told = true;
    }

    /** What follows is an ornament again. */
    void unmark() {
        endMark();
        role = Role.ORNAMENT;
    }

    private void endMark() {
        endClip();
        if (told) {
            page.out().add("EMC\n");
            told = false;
        }
    }

    /** What follows is a drawing, which may come again elsewhere; x and y of its lower left corner in points. */
    void beginDrawing(double x, double y) {
        endClip();
        page.apart();
        page.move(x, y);
        drawing.begin(x, y);
        layer = drawing;
    }

    void endDrawing() throws IOException {
        endClip();
        layer = page;
        OptionalInt form = forms.form(drawing.out(), ANYWHERE, drawing.named());
        if (form.isPresent()) {
            page.name(form.getAsInt());
        } else {
            page.out().add(drawing.out());
            page.named().addAll(drawing.named());
        }
        page.endApart();
    }

    /** Before anything is painted. */
    private void prepare(Shape within) {
        if (!told) {
            page.out().add('/').add(role.type()).add(" BMC\n");
            told = true;
        }
        if (within == clip || within != null && within.equals(clip)) {
            return;
        }
        endClip();
        if (within != null) {
            clip = within;
            layer.apart();
            rows.path().read(within.getPathIterator(null));
            rows.together(layer, rows.path().evenOdd() ? "W* n\n" : "W n\n");
        }
    }

    private void endClip() {
        if (clip != null) {
            layer.endApart();
            clip = null;
        }
    }

    void fill(Shape shape, AffineTransform toPage, Color colour, Shape within) throws IOException {
        prepare(within);
        rows.path().read(shape.getPathIterator(toPage));
        if (rows.path().figures() == 0) {
            return;
        }
        layer.pens(layer.pens().filling(layer.out(), colour));
        String operator = rows.path().evenOdd() ? "f*\n" : "f\n";
        if (rows.path().separable()) {
            rows.apart(layer, operator, 0);
        } else {
            rows.together(layer, operator);
        }
    }

    /** @param scale page units to one unit of the pen */
    void draw(Shape shape, AffineTransform toPage, Color colour, BasicStroke pen, double scale, Shape within)
            throws IOException {
        prepare(within);
        layer.pens(layer.pens().drawing(layer.out(), colour, pen, scale));
        rows.path().read(shape.getPathIterator(toPage));
        rows.apart(layer, "S\n", pen.getLineWidth() * scale);
    }

    /**
     * Writes letters.
     *
     * @param toPage from the text's own plane, with y up and the baseline's beginning as its origin
     * @param font name of the font among the page's resources
     */
    void text(byte[] codes, AffineTransform toPage, String font, double size, Color colour, Shape within) {
        prepare(within);
        PdfBytes out = layer.out();
        layer.pens(layer.pens().filling(out, colour));
        double scale = Math.sqrt(Math.abs(toPage.getDeterminant()));
        out.add("BT/").add(font).add(' ').number(size * scale).add("Tf ");
        out.share(toPage.getScaleX() / scale).share(toPage.getShearY() / scale);
        out.share(toPage.getShearX() / scale).share(toPage.getScaleY() / scale);
        out.number(toPage.getTranslateX() - layer.place().x());
        out.number(toPage.getTranslateY() - layer.place().y());
        out.add("Tm<");
        for (byte code : codes) {
            out.hex(code);
        }
        out.add(">Tj ET\n");
    }
}
