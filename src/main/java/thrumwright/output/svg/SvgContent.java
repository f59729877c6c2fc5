package thrumwright.output.svg;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.output.vector.PathFigures;

/** What a drawing paints, in groups of one colour and one pen. */
final class SvgContent {
    private static final String[] CAPS = {"butt", "round", "square"};
    private static final String[] JOINS = {"miter", "round", "bevel"};

    private final StringBuilder out = new StringBuilder();
    private final SvgSymbols symbols;
    private final Rectangle2D box;
    private final PathFigures path = new PathFigures();
    private final SvgRow row;
    private final List<SvgRow.Placed> painted = new ArrayList<>();
    private String paint = "";
    private Shape clip;

    /** @param box what is seen of the drawing */
    SvgContent(SvgSymbols symbols, Rectangle2D box) {
        this.symbols = symbols;
        this.box = box;
        this.row = new SvgRow(symbols, out);
    }

    /** All of it. */
    String end() {
        with("", null);
        return out.toString();
    }

    void fill(Shape shape, AffineTransform toPage, Color colour, Shape within) {
        path.read(shape.getPathIterator(toPage));
        with("fill=\"" + hex(colour) + (path.evenOdd() ? "\" fill-rule=\"evenodd" : "") + '"', within);
        if (path.separable()) {
            apart();
        } else {
            add(0, path.figures());
        }
    }

    /** @param scale page units to one unit of the pen, more than 0 */
    void draw(Shape shape, AffineTransform toPage, Color colour, BasicStroke pen, double scale, Shape within) {
        path.read(shape.getPathIterator(toPage));
        with(line(colour, pen, scale), within);
        apart();
    }

    /** Whether letters are text, and not shapes. */
    boolean setsText() {
        return symbols.inBrowser();
    }

    void text(SvgText text, AffineTransform toPage, Color colour, Shape within) {
        with("", within);
        text.write(out, toPage, hex(colour));
    }

    /** Uses a drawing that stands elsewhere in the document; gives whether there is one with those words. */
    boolean figure(String says, Rectangle2D where, Shape within) {
        with("", within);
        return symbols.useFigure(out, says, where);
    }

    private void apart() {
        for (int i = 0; i < path.figures(); i++) {
            add(i, i + 1);
        }
    }

    private void add(int first, int next) {
        painted.add(new SvgRow.Placed(symbols.outlines().of(path, first, next), path.x(first), path.y(first)));
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }

    private static String line(Color colour, BasicStroke pen, double scale) {
        StringBuilder line = new StringBuilder("fill=\"none\" stroke=\"").append(hex(colour));
        number(line.append("\" stroke-width=\""), pen.getLineWidth() * scale);
        if (pen.getEndCap() != BasicStroke.CAP_ROUND) {
            line.append("\" stroke-linecap=\"").append(CAPS[pen.getEndCap()]);
        }
        if (pen.getLineJoin() != BasicStroke.JOIN_ROUND) {
            line.append("\" stroke-linejoin=\"").append(JOINS[pen.getLineJoin()]);
        }
        if (pen.getDashArray() != null) {
            line.append("\" stroke-dasharray=\"");
            for (float length : pen.getDashArray()) {
                number(line, length * scale);
                line.append(' ');
            }
            number(line.append("\" stroke-dashoffset=\""), pen.getDashPhase() * scale);
        }
        return line.append('"').toString();
    }

    private static void number(StringBuilder out, double number) {
        SvgData.number(out, PathFigures.hundredths(number));
    }

    /** Goes on with this paint and within this. */
    private void with(String wanted, Shape within) {
        boolean samePlace = within == clip || within != null && within.equals(clip);
        if (samePlace && wanted.equals(paint)) {
            return;
        }
        if (!painted.isEmpty()) {
            row.write(paint, painted);
            painted.clear();
        }
        if (!samePlace) {
            clipTo(within);
        }
        paint = wanted;
    }

    private void clipTo(Shape within) {
        if (clip != null && !clip.contains(box)) {
            out.append("</g>\n");
        }
        if (within != null && !within.contains(box)) {
            PathFigures edge = new PathFigures();
            edge.read(within.getPathIterator(null));
            String id = symbols.drawn(new Object(), 0, 0);
            out.append("<clipPath id=\"").append(id).append("\"><path d=\"");
            if (edge.figures() > 0) {
                symbols.outlines()
                        .of(edge, 0, edge.figures())
                        .tell(new SvgData(out, PathFigures.hundredths(edge.x(0)), PathFigures.hundredths(edge.y(0))));
            }
            out.append("\"/></clipPath><g clip-path=\"url(#").append(id).append(")\">");
        }
        clip = within;
    }
}
