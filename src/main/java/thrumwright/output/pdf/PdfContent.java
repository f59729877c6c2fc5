package thrumwright.output.pdf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import thrumwright.output.page.Role;

/**
 * What a page of a PDF paints (ISO 32000-1, 8 and 9.4). Colours, pens and clips are told only when they change, and only
 * once something is painted with them; points that fall together at the fineness of the file are told once.
 */
final class PdfContent {
    private static final int BLACK = 0xff000000;
    /** A row of fewer figures is told each time. */
    private static final int WORTH_A_STAMP = 8;

    private final PdfBytes out = new PdfBytes(1 << 16);
    private final PdfPath path = new PdfPath();
    private final PdfStamps stamps;
    private final Set<Integer> stamped = new TreeSet<>();
    private Pens state = Pens.FIRST;
    /** The state outside the clip that is open. */
    private Pens outside;

    private Shape clip;
    /** What is being marked, and whether that has been told. */
    private Role role;

    private boolean told;

    PdfContent(PdfStamps stamps) {
        this.stamps = stamps;
    }

    /** What the page is painted with at the moment. */
    private record Pens(int fill, int line, int width, int cap, int join, float[] dash) {
        private static final Pens FIRST =
                new Pens(BLACK, BLACK, 100, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, null);
    }

    /** Begins a new page; what is painted on it is an ornament until it is marked. */
    void begin() {
        out.clear();
        stamped.clear();
        state = Pens.FIRST;
        outside = null;
        clip = null;
        role = Role.ORNAMENT;
        told = false;
    }

    /** Ends the page and gives all of it. */
    PdfBytes end() {
        endMark();
        return out;
    }

    /** Numbers of the forms that the page names. */
    Set<Integer> stamped() {
        return stamped;
    }

    /** Marks what follows as a stretch with this number. */
    void mark(Role as, int number) {
        endMark();
        out.add('/').add(as.type()).add("<</MCID ").add((long) number).add(">>BDC\n");
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
            out.add("EMC\n");
            told = false;
        }
    }

    /** Before anything is painted. */
    private void prepare(Shape within) {
        if (!told) {
            out.add('/').add(role.type()).add(" BMC\n");
            told = true;
        }
        if (within == clip || within != null && within.equals(clip)) {
            return;
        }
        endClip();
        if (within != null) {
            out.add("q\n");
            outside = state;
            clip = within;
            path.read(within.getPathIterator(null));
            plain(0, path.figures(), "W n\n");
        }
    }

    private void endClip() {
        if (clip != null) {
            out.add("Q\n");
            state = outside;
            clip = null;
        }
    }

    void fill(Shape shape, AffineTransform toPage, Color colour, Shape within) throws IOException {
        prepare(within);
        fillColour(colour);
        path.read(shape.getPathIterator(toPage));
        paint(path.evenOdd() ? "f*\n" : "f\n", 0);
    }

    /** @param scale page units to one unit of the pen */
    void draw(Shape shape, AffineTransform toPage, Color colour, BasicStroke pen, double scale, Shape within)
            throws IOException {
        prepare(within);
        pen(colour, pen, scale);
        path.read(shape.getPathIterator(toPage));
        paint("S\n", pen.getLineWidth() * scale);
    }

    private void fillColour(Color colour) {
        if (state.fill != colour.getRGB()) {
            state = new Pens(colour.getRGB(), state.line, state.width, state.cap, state.join, state.dash);
            colour(colour, "rg\n");
        }
    }

    private void colour(Color colour, String operator) {
        out.share(colour.getRed() / 255.0).share(colour.getGreen() / 255.0).share(colour.getBlue() / 255.0);
        out.add(operator);
    }

    private void pen(Color colour, BasicStroke pen, double scale) {
        if (state.line != colour.getRGB()) {
            colour(colour, "RG\n");
        }
        int width = PdfBytes.hundredths(pen.getLineWidth() * scale);
        if (state.width != width) {
            out.hundredths(width).add("w\n");
        }
        if (state.cap != pen.getEndCap()) {
            // Java counts butt, round, square from 0 like PDF (8.4.3.3)
            out.add((long) pen.getEndCap()).add(" J\n");
        }
        if (state.join != pen.getLineJoin()) {
            // and miter, round, bevel (8.4.3.4)
            out.add((long) pen.getLineJoin()).add(" j\n");
        }
        if (!Arrays.equals(state.dash, pen.getDashArray())) {
            dash(pen, scale);
        }
        state = new Pens(state.fill, colour.getRGB(), width, pen.getEndCap(), pen.getLineJoin(), pen.getDashArray());
    }

    private void dash(BasicStroke pen, double scale) {
        out.add('[');
        if (pen.getDashArray() != null) {
            for (float length : pen.getDashArray()) {
                out.number(length * scale);
            }
        }
        out.add(']').number(pen.getDashPhase() * scale).add("d\n");
    }

    /** Paints what was read: rows of many figures as stamps, all else as it is. */
    private void paint(String operator, double width) throws IOException {
        int first = 0;
        int pending = 0;
        while (first < path.figures()) {
            int next = path.rowEnd(first);
            if (next - first >= WORTH_A_STAMP && !path.evenOdd()) {
                plain(pending, first, operator);
                stamp(first, stamps.form(path, first, next, operator, width));
                pending = next;
            }
            first = next;
        }
        plain(pending, first, operator);
    }

    private void plain(int first, int next, String operator) {
        if (first < next) {
            path.write(out, first, next, 0, 0);
            out.add(operator);
        }
    }

    private void stamp(int first, int form) {
        stamped.add(form);
        out.add("q 1 0 0 1 ")
                .number(path.x(first))
                .number(path.y(first))
                .add("cm/X")
                .add((long) form)
                .add(" Do Q\n");
    }

    /**
     * Writes letters.
     *
     * @param toPage from the text's own plane, with y up and the baseline's beginning as its origin
     * @param font name of the font among the page's resources
     */
    void text(byte[] codes, AffineTransform toPage, String font, double size, Color colour, Shape within) {
        prepare(within);
        fillColour(colour);
        double scale = Math.sqrt(Math.abs(toPage.getDeterminant()));
        out.add("BT/").add(font).add(' ').number(size * scale).add("Tf ");
        out.share(toPage.getScaleX() / scale).share(toPage.getShearY() / scale);
        out.share(toPage.getShearX() / scale).share(toPage.getScaleY() / scale);
        out.number(toPage.getTranslateX()).number(toPage.getTranslateY()).add("Tm<");
        for (byte code : codes) {
            out.hex(code);
        }
        out.add(">Tj ET\n");
    }
}
