package thrumwright.output.svg;

import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import thrumwright.output.vector.Fineness;
import thrumwright.output.vector.Outline;
import thrumwright.output.vector.Outlines;
import thrumwright.output.vector.PathFigures;

/**
 * All that has been drawn in a document and may come again there: an outline, a run of them, or a row. It is drawn where it
 * is first met, and from then on used.
 */
public final class SvgSymbols {
    private static final Pattern NAME = Pattern.compile(" id=\"([a-zA-Z]+)\"");
    private static final Pattern NAMED = Pattern.compile("#([a-zA-Z]+)");
    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private final String reference;
    private final Outlines outlines;
    private final Map<Object, Symbol> symbols = new HashMap<>();
    private final Map<String, Figure> figures = new HashMap<>();
    private final Set<String> given = new HashSet<>();

    /** A whole drawing, and how large it is, units. */
    private record Figure(String id, double width, double height) {}

    /** Something that has been drawn, and where: hundredths of a unit. */
    private record Symbol(String id, int x, int y) {}

    private SvgSymbols(String reference, Fineness fineness) {
        this.reference = reference;
        this.outlines = new Outlines(fineness);
    }

    /** Of a file, also for programs that know SVG 1.1 only. */
    public static SvgSymbols inFile() {
        return new SvgSymbols("xlink:href", Fineness.PAPER);
    }

    /** Of a page for a browser. */
    public static SvgSymbols inPage() {
        return new SvgSymbols("href", Fineness.SCREEN);
    }

    /** Whether a browser draws it. */
    boolean inBrowser() {
        return outlines.fineness().equals(Fineness.SCREEN);
    }

    Outlines outlines() {
        return outlines;
    }

    private int hundredths(double place) {
        return outlines.fineness().hundredths(place);
    }

    /** As short as can be: a, b … Z, aa, ba … */
    private String nextId() {
        StringBuilder id = new StringBuilder();
        for (int left = symbols.size(); left >= 0; left = left / LETTERS.length() - 1) {
            id.append(LETTERS.charAt(left % LETTERS.length()));
        }
        given.add(id.toString());
        return id.toString();
    }

    /** A whole document without those of the names given here that nothing in it uses. */
    public String trimmed(String document) {
        Set<String> used =
                NAMED.matcher(document).results().map(found -> found.group(1)).collect(Collectors.toSet());
        return NAME.matcher(document)
                .replaceAll(found -> given.contains(found.group(1)) && !used.contains(found.group(1))
                        ? ""
                        : Matcher.quoteReplacement(found.group()));
    }

    /**
     * Takes a whole drawing as drawn, by its words, in the place of an earlier one with the same: what follows belongs to the same
     * sheet. Gives the name that it must have.
     *
     * @param width units, more than 0
     * @param height the same
     */
    public String figure(String says, double width, double height) {
        String id = nextId();
        symbols.put(new Object(), new Symbol(id, 0, 0));
        figures.put(says, new Figure(id, width, height));
        return id;
    }

    /** Uses a whole drawing with those words within a box, as large as it can be; gives whether there is one. */
    boolean useFigure(StringBuilder out, String says, Rectangle2D box) {
        Figure figure = figures.get(says);
        if (figure == null) {
            return false;
        }
        out.append("<svg");
        double[] values = {box.getX(), box.getY(), box.getWidth(), box.getHeight()};
        String[] names = {"x", "y", "width", "height"};
        for (int i = 0; i < names.length; i++) {
            out.append(' ').append(names[i]).append("=\"");
            SvgData.number(out, PathFigures.hundredths(values[i]));
            out.append('"');
        }
        out.append(" viewBox=\"0 0 ").append(Math.round(figure.width())).append(' ');
        out.append(Math.round(figure.height()))
                .append("\"><use ")
                .append(reference)
                .append("=\"#");
        out.append(figure.id()).append("\"/></svg>\n");
        return true;
    }

    /** What draws a whole drawing again, where the first stands; its name is the one that it was given. */
    public String useWhole(String id) {
        return "<use " + reference + "=\"#" + id + "\"/>\n";
    }

    boolean knows(Object thing) {
        return symbols.containsKey(thing);
    }

    /** Takes something as drawn, its beginning at a place, in points; gives the name that it must have. */
    String drawn(Object thing, double x, double y) {
        String id = nextId();
        symbols.put(thing, new Symbol(id, hundredths(x), hundredths(y)));
        return id;
    }

    /** Uses what has been drawn, at another place, points. */
    void use(StringBuilder out, Object thing, double x, double y) {
        Symbol symbol = symbols.get(thing);
        out.append("<use ").append(reference).append("=\"#").append(symbol.id()).append('"');
        shift(out, " x=\"", hundredths(x) - symbol.x());
        shift(out, " y=\"", hundredths(y) - symbol.y());
        out.append("/>");
    }

    private static void shift(StringBuilder out, String attribute, int hundredths) {
        if (hundredths != 0) {
            out.append(attribute);
            SvgData.number(out, hundredths);
            out.append('"');
        }
    }

    /** Draws an outline, or uses it. */
    void outline(StringBuilder out, Outline outline, double x, double y) {
        if (knows(outline)) {
            use(out, outline, x, y);
            return;
        }
        out.append("<path id=\"").append(drawn(outline, x, y)).append("\" d=\"");
        outline.tell(new SvgData(out, hundredths(x), hundredths(y)));
        out.append("\"/>");
    }
}
