package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;

/**
 * A row of a table: a text in each column.
 *
 * @param columns where they stand
 */
public record TableRowPart(List<String> cells, Columns columns, RowKind kind, Type type, Palette palette)
        implements Part {
    private static final double PADDING = 3;
    private static final double BOX = 12;

    /** What a row is. */
    public enum RowKind {
        /** The names of the columns. */
        HEAD,
        PLAIN,
        /** With a box to tick before it. */
        TICKED
    }

    /**
     * Columns side by side, in points.
     *
     * @param left where the first begins
     * @param widths of each, with the room to the next
     * @param strong how many of the first stand out
     */
    public record Columns(double left, List<Double> widths, int strong) {
        /** Room between the texts of two columns. */
        public static final double BETWEEN = 10;
        /** Room for a box before the first column. */
        public static final double FOR_BOX = 22;

        double text(int column) {
            return widths.get(column) - BETWEEN;
        }
    }

    public static Font font(RowKind kind, boolean strong, Type type) {
        if (kind == RowKind.HEAD) {
            return type.small();
        }
        return strong ? type.tableStrong() : type.table();
    }

    private Part text(int column) {
        return new TextPart(
                cells.get(column),
                font(kind, column < columns.strong(), type),
                kind == RowKind.HEAD ? palette.faint() : palette.ink());
    }

    @Override
    public double height(double width) {
        double most = 0;
        for (int i = 0; i < cells.size(); i++) {
            most = Math.max(most, text(i).height(columns.text(i)));
        }
        return most + 2 * PADDING;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        if (kind != RowKind.HEAD) {
            g.setColor(palette.faint());
            g.setStroke(new BasicStroke(0.4f));
            g.draw(new Line2D.Double(x, y, x + width, y));
        }
        if (kind == RowKind.TICKED) {
            TickMarks.box(g, x + 1, y + PADDING + 1, BOX, palette);
        }
        Structured.row(g, () -> cells(g, x + columns.left(), y + PADDING));
    }

    private void cells(Graphics2D g, double x, double y) {
        double at = x;
        for (int i = 0; i < cells.size(); i++) {
            Role role = kind == RowKind.HEAD ? Role.HEAD : Role.CELL;
            Structured.part(role, text(i)).paint(g, at, y, columns.text(i));
            at += columns.widths().get(i);
        }
    }
}
