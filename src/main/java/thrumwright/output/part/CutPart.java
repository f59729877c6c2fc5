package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.piece.Place;
import thrumwright.sheet.CutGroup;
import thrumwright.sheet.CutLine;

/**
 * A line of the cut list: box, how many, length, widths, yarn, for what.
 *
 * @param letter of the yarn on the cards; blank for a band
 */
public record CutPart(CutGroup group, String letter, Phrases phrases, Type type, Palette palette) implements Part {
    private static final double BOX = 12;
    private static final double[] COLUMNS = {0, 0.04, 0.11, 0.235, 0.325, 0.66};

    public static Part header(Phrases phrases, Type type, Palette palette) {
        return new Header(phrases, type, palette);
    }

    private record Header(Phrases phrases, Type type, Palette palette) implements Part {
        @Override
        public double height(double width) {
            return 16;
        }

        @Override
        public void paint(Graphics2D g, double x, double y, double width) {
            String[] keys = {null, "cut.count", "cut.length", "cut.widths", "cut.yarn", "cut.for"};
            Structured.row(g, () -> {
                for (int i = 1; i < keys.length; i++) {
                    Part head = new TextPart(phrases.say(keys[i]), type.small(), palette.faint());
                    Structured.part(Role.HEAD, head).paint(g, x + COLUMNS[i] * width, y, width);
                }
            });
        }
    }

    private Part yarn() {
        return new TextPart(roles(), type.table(), palette.ink());
    }

    /** What a cut is for, and when. */
    public static String use(CutLine cut, Phrases phrases) {
        String place = cut.sewnOn() ? "" : phrases.say(cut.place() == Place.START ? "cut.start" : "cut.top") + ", ";
        String text = cut.use() + ", " + place + phrases.say("cut.step") + " " + cut.step();
        return cut.shared().isEmpty() ? text : text + "; " + cut.shared();
    }

    private CutLine cut() {
        return group.first();
    }

    /** What to cut, and the parts that it plays. */
    private String roles() {
        String roles =
                group.lines().stream().map(CutLine::whatAndRole).distinct().collect(Collectors.joining(" · "));
        return (letter + " " + roles).strip();
    }

    private Part use() {
        String uses = group.lines().stream().map(CutLine::use).distinct().collect(Collectors.joining(", "));
        String steps = group.steps().stream().map(String::valueOf).collect(Collectors.joining(", "));
        String said = phrases.say(
                group.lines().size() == 1 ? "cut.for.step" : "cut.for.steps", Map.of("use", uses, "steps", steps));
        String all =
                Stream.concat(Stream.of(said), group.remarks(phrases).stream()).collect(Collectors.joining("; "));
        return new TextPart(all, type.table(), palette.ink());
    }

    @Override
    public double height(double width) {
        double yarn = yarn().height((COLUMNS[5] - COLUMNS[4]) * width - 22);
        double use = use().height((1 - COLUMNS[5]) * width);
        return Math.max(yarn, use) + 6;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(0.4f));
        g.draw(new Line2D.Double(x, y, x + width, y));
        double at = y + 3;
        TickMarks.box(g, x + 1, at + 2, BOX, palette);
        cut().yarn().ifPresent(yarn -> TickMarks.dot(g, x + COLUMNS[4] * width, at + 3, 10, yarn.colour(), palette));
        Structured.row(g, () -> cells(g, x, at, width));
    }

    private void cells(Graphics2D g, double x, double y, double width) {
        text(group.count() + " ×", 1, g, x, y, width);
        text(group.first().length(), 2, g, x, y, width);
        text(cut().times(), 3, g, x, y, width);
        cell(yarn()).paint(g, x + COLUMNS[4] * width + 15, y, (COLUMNS[5] - COLUMNS[4]) * width - 22);
        cell(use()).paint(g, x + COLUMNS[5] * width, y, (1 - COLUMNS[5]) * width);
    }

    private static Part cell(Part part) {
        return Structured.part(Role.CELL, part);
    }

    private void text(String text, int column, Graphics2D g, double x, double y, double width) {
        cell(new TextPart(text, type.tableStrong(), palette.ink())).paint(g, x + COLUMNS[column] * width, y, width);
    }
}
