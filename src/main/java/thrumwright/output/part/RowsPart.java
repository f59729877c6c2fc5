package thrumwright.output.part;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.sheet.RowLine;

/**
 * A line of rows in columns.
 *
 * @param each width of a column
 */
record RowsPart(List<RowLine> rows, double each, Type type, Palette palette) implements Part {
    private static final double BETWEEN = 18;

    /** All rows in as many columns as fit, a part for each line. */
    static List<Part> lines(List<RowLine> rows, Type type, Palette palette, double width) {
        double widest = 0;
        for (RowLine row : rows) {
            widest = Math.max(widest, TextPart.width(text(row), type.essential()));
        }
        double cell = box(type) + 8 + widest + BETWEEN;
        int columns = (int) Math.max(1, Math.min(rows.size(), Math.floor((width + BETWEEN) / cell)));
        double each = Math.min(width / columns, cell * 1.25);
        List<Part> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i += columns) {
            List<RowLine> line = rows.subList(i, Math.min(rows.size(), i + columns));
            lines.add(new RowsPart(line, each, type, palette));
        }
        return lines;
    }

    private static double box(Type type) {
        return Type.box(type.essential());
    }

    private static String text(RowLine row) {
        return row.label() + " " + row.arrow() + " " + row.brief();
    }

    private TextPart words(int row) {
        return new TextPart(text(rows.get(row)), type.essential(), palette.ink());
    }

    /** Where the words of a row begin, from the left of all. */
    private double indent(int row) {
        return row * each + box(type) + 8;
    }

    /** Words of large type may be too wide for a small page, even alone in their line. */
    @Override
    public double height(double width) {
        double more = 0;
        for (int i = 0; i < rows.size(); i++) {
            TextPart words = words(i);
            more = Math.max(more, words.height(width - indent(i)) - words.height(Double.MAX_VALUE));
        }
        return type.large() * 1.32 + more;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        for (int i = 0; i < rows.size(); i++) {
            TickMarks.box(g, x + i * each + 1, y + type.large() * 0.28, box(type), palette);
            Structured.item(words(i)).paint(g, x + indent(i), y, width - indent(i));
        }
    }
}
