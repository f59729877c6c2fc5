package thrumwright.output.pdf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Arrays;
import thrumwright.output.vector.PathFigures;

/** What is painted with at the moment (ISO 32000-1, 8.4): told only where it changes. */
record PdfPens(int fill, int line, int width, int cap, int join, float[] dash) {
    private static final int BLACK = 0xff000000;
    /** With these every page and every form begins. */
    static final PdfPens FIRST = new PdfPens(BLACK, BLACK, 100, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, null);

    /** From now on areas and letters have this colour. */
    PdfPens filling(PdfBytes out, Color colour) {
        if (fill == colour.getRGB()) {
            return this;
        }
        tell(out, colour, "rg\n");
        return new PdfPens(colour.getRGB(), line, width, cap, join, dash);
    }

    /**
     * From now on lines are drawn so.
     *
     * @param scale page units to one unit of the pen
     */
    PdfPens drawing(PdfBytes out, Color colour, BasicStroke pen, double scale) {
        if (line != colour.getRGB()) {
            tell(out, colour, "RG\n");
        }
        int wide = PathFigures.hundredths(pen.getLineWidth() * scale);
        if (width != wide) {
            out.hundredths(wide).add("w\n");
        }
        if (cap != pen.getEndCap()) {
            // Java counts butt, round, square from 0 like PDF (8.4.3.3)
            out.add((long) pen.getEndCap()).add(" J\n");
        }
        if (join != pen.getLineJoin()) {
            // and miter, round, bevel (8.4.3.4)
            out.add((long) pen.getLineJoin()).add(" j\n");
        }
        if (!Arrays.equals(dash, pen.getDashArray())) {
            dash(out, pen, scale);
        }
        return new PdfPens(fill, colour.getRGB(), wide, pen.getEndCap(), pen.getLineJoin(), pen.getDashArray());
    }

    private static void tell(PdfBytes out, Color colour, String operator) {
        out.share(colour.getRed() / 255.0).share(colour.getGreen() / 255.0).share(colour.getBlue() / 255.0);
        out.add(operator);
    }

    private static void dash(PdfBytes out, BasicStroke pen, double scale) {
        out.add('[');
        if (pen.getDashArray() != null) {
            for (float length : pen.getDashArray()) {
                out.number(length * scale);
            }
        }
        out.add(']').number(pen.getDashPhase() * scale).add("d\n");
    }
}
