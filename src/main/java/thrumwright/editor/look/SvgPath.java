package thrumwright.editor.look;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of an SVG file that has nothing but paths of straight lines and curves: {@code M L H V C Z}, large or small
 * (<a href="https://www.w3.org/TR/SVG11/paths.html">SVG 1.1, paths</a>). A whole reader of SVG takes longer to load than
 * the window to be drawn.
 */
final class SvgPath {
    private static final String PATH = " d=\"";

    private final Path2D.Float lines = new Path2D.Float();
    private final String data;
    private int at;
    private char command;

    private SvgPath(String data) {
        this.data = data;
    }

    /** @throws IllegalArgumentException if there is something else in a path */
    static List<Path2D> read(String svg) {
        List<Path2D> all = new ArrayList<>();
        for (int from = svg.indexOf(PATH); from >= 0; from = svg.indexOf(PATH, from + 1)) {
            int begin = from + PATH.length();
            all.add(new SvgPath(svg.substring(begin, svg.indexOf('"', begin))).whole());
        }
        return all;
    }

    private Path2D whole() {
        skip();
        while (at < data.length()) {
            if (Character.isLetter(data.charAt(at))) {
                command = data.charAt(at++);
            }
            step();
            skip();
        }
        return lines;
    }

    private void step() {
        Point2D here = lines.getCurrentPoint();
        boolean more = Character.isLowerCase(command) && here != null;
        double x = more ? here.getX() : 0;
        double y = more ? here.getY() : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                lines.moveTo(x + number(), y + number());
                command = command == 'M' ? 'L' : 'l';
            }
            case 'L' -> lines.lineTo(x + number(), y + number());
            case 'H' -> lines.lineTo(x + number(), here.getY());
            case 'V' -> lines.lineTo(here.getX(), y + number());
            case 'C' ->
                lines.curveTo(x + number(), y + number(), x + number(), y + number(), x + number(), y + number());
            case 'Z' -> lines.closePath();
            default -> throw new IllegalArgumentException("not a line or a curve: " + command + " in " + data);
        }
    }

    private double number() {
        skip();
        int from = at;
        while (at < data.length() && isNumber(data.charAt(at), at == from)) {
            at++;
        }
        return Double.parseDouble(data.substring(from, at));
    }

    private static boolean isNumber(char c, boolean first) {
        return Character.isDigit(c) || c == '.' || first && c == '-';
    }

    private void skip() {
        while (at < data.length() && (data.charAt(at) == ' ' || data.charAt(at) == ',')) {
            at++;
        }
    }
}
