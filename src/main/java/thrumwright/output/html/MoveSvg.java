package thrumwright.output.html;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.Move;
import thrumwright.drawing.step.MoveLines;
import thrumwright.output.page.Markup;

/**
 * A move as SVG whose yarn can be laid in by a script: each stretch of it says from which share of the yarn to which it
 * reaches. Without a script all of it is there.
 */
record MoveSvg(Move move, Palette palette) {
    /** Thickness of the lighter body of a yarn within its rim, as a share. */
    private static final double BODY = 0.78;
    /** No rim is wider on both sides together, mm. */
    private static final double RIM = 0.36;

    /** @param says what the picture shows, in words */
    String text(String says) {
        MoveLines lines = new MoveLines(move, palette);
        Rectangle2D all = lines.bounds();
        StringBuilder svg = new StringBuilder();
        svg.append("<svg role=\"img\" aria-label=\"").append(Markup.escaped(says));
        svg.append("\" viewBox=\"0 0 ").append(number(all.getWidth())).append(' ');
        svg.append(number(all.getHeight()))
                .append("\" data-rows=\"")
                .append(rows())
                .append("\">\n");
        lines.all().forEach(line -> svg.append(line(line, all)));
        return svg.append("</svg>\n").toString();
    }

    /** How much of the yarn is laid in before each row, and after the last. */
    private String rows() {
        return IntStream.rangeClosed(0, move.rows())
                .mapToObj(row -> share(move.share(row)))
                .collect(Collectors.joining(" "));
    }

    private static String line(MoveLines.Line line, Rectangle2D all) {
        String path = path(line, all);
        String laid = line.from() < 0
                ? "<g>"
                : "<g data-from=\"" + share(line.from()) + "\" data-to=\"" + share(line.to()) + "\">";
        return laid
                + stroke(path, line.width(), Palette.mixed(line.colour(), Color.BLACK, 0.45))
                + stroke(path, Math.max(BODY * line.width(), line.width() - RIM), line.colour())
                + "</g>\n";
    }

    private static String stroke(String path, double width, Color colour) {
        return "<path pathLength=\"1\" d=\"" + path + "\" stroke-width=\"" + number(width) + "\" stroke=\""
                + String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xffffff) + "\"/>";
    }

    private static String path(MoveLines.Line line, Rectangle2D all) {
        return IntStream.range(0, line.x().length)
                .mapToObj(i -> (i == 0 ? "M" : "L")
                        + number(line.x()[i] - all.getMinX())
                        + ' '
                        + number(all.getMaxY() - line.y()[i]))
                .collect(Collectors.joining());
    }

    private static String number(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm);
    }

    private static String share(double share) {
        return String.format(Locale.ROOT, "%.5f", share);
    }
}
