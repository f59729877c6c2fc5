package thrumwright.output.svg;

import java.awt.Font;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import thrumwright.output.page.Markup;
import thrumwright.output.page.TextPart;
import thrumwright.output.vector.PathFigures;

/**
 * Words in one line as SVG's own text: as wide as in the program's font, whichever the browser has.
 *
 * @param x where they begin on their line, units
 */
record SvgText(String text, Font font, double x, double y) {
    void write(StringBuilder out, AffineTransform toPage, String colour) {
        if (text.isBlank()) {
            return;
        }
        boolean upright = toPage.getShearX() == 0 && toPage.getShearY() == 0;
        double scale = upright ? toPage.getScaleY() : 1;
        Point2D at = new Point2D.Double(x, y);
        out.append("<text");
        if (upright) {
            toPage.transform(at, at);
        } else {
            out.append(turned(toPage));
        }
        number(out, "x", at.getX());
        number(out, "y", at.getY());
        number(out, "font-size", font.getSize2D() * scale);
        if (text.length() > 1) {
            number(out, "textLength", TextPart.wordWidth(text, font) * scale);
            out.append(" lengthAdjust=\"spacingAndGlyphs\"");
        }
        out.append(style()).append(" fill=\"").append(colour).append("\">");
        out.append(Markup.escaped(text)).append("</text>\n");
    }

    private String style() {
        String name = font.getFontName();
        String weight = name.contains("Bold") ? "700" : name.contains("Semibold") ? "600" : "";
        String heavy = weight.isEmpty() ? "" : " font-weight=\"" + weight + '"';
        return name.contains("It") ? heavy + " font-style=\"italic\"" : heavy;
    }

    private static String turned(AffineTransform toPage) {
        double[] m = new double[6];
        toPage.getMatrix(m);
        StringBuilder matrix = new StringBuilder(" transform=\"matrix(");
        for (double each : m) {
            SvgData.number(matrix, PathFigures.hundredths(each));
            matrix.append(' ');
        }
        return matrix.append(")\"").toString();
    }

    private static void number(StringBuilder out, String attribute, double number) {
        out.append(' ').append(attribute).append("=\"");
        SvgData.number(out, PathFigures.hundredths(number));
        out.append('"');
    }
}
