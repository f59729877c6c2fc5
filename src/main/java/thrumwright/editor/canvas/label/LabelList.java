package thrumwright.editor.canvas.label;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.editor.canvas.gesture.Gaps;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.piece.Place;

/**
 * The labels in their places.
 *
 * @param rows from above
 * @param columns how wide they are
 * @param shown how many of the columns there is room for, from the first
 * @param rowHeight pixels
 */
public record LabelList(List<LabelRow> rows, LabelWidths columns, int shown, int rowHeight, LabelSizes sizes) {
    /** In a narrow window the list leaves out its last columns, so that it takes no more of the width than that. */
    private static final double SHARE = 0.48;

    public LabelList {
        rows = List.copyOf(rows);
    }

    /** Before anything is known. */
    public static LabelList empty(LabelSizes sizes) {
        return new LabelList(List.of(), LabelWidths.NONE, LabelWidths.COLUMNS, 0, sizes);
    }

    /** Leaves out what is least asked for, cut and height; then the amount, and at last names are shortened. */
    LabelList narrowed(int room) {
        int most = (int) (room * SHARE) - sizes.leader();
        int fit = LabelWidths.COLUMNS;
        while (fit > 1 && width(columns, fit) > most) {
            fit--;
        }
        int over = Math.max(0, width(columns, fit) - most);
        LabelWidths fitting =
                over == 0 ? columns : columns.withName(Math.max(sizes.leastName(), columns.name() - over));
        return new LabelList(rows, fitting, fit, rowHeight, sizes);
    }

    private int width(LabelWidths widths, int count) {
        return sizes.edge() + widths.sum(count) + count * sizes.gap();
    }

    /** Width of the columns that are shown, without the lines to the blocks, pixels. */
    public int width() {
        return width(columns, shown);
    }

    /** Height that all labels need, pixels. */
    public int leastHeight() {
        return rows.isEmpty() ? 0 : (rows.size() + 1) * rowHeight;
    }

    /**
     * Where blocks can be put down between the labels.
     *
     * @param by how far below the list's upper edge heights are counted from, pixels
     */
    public Gaps gaps(double by) {
        List<Gaps.BlockLine> lines = new ArrayList<>();
        double design = 0;
        for (LabelRow row : rows) {
            row.spot().ifPresent(spot -> lines.add(new Gaps.BlockLine(spot.place(), spot.id(), row.y() + by)));
            design = row.spot().isPresent() ? design : row.y() + by;
        }
        return new Gaps(lines, design);
    }

    private Optional<LabelRow> rowAt(int y) {
        return rows.stream()
                .filter(row -> Math.abs(row.y() - y) <= rowHeight / 2.0)
                .findFirst();
    }

    /** The block whose label is there. */
    public Optional<BlockSpot> at(int y) {
        return rowAt(y).flatMap(LabelRow::spot);
    }

    /** Whether the design's label is there. */
    public boolean isDesign(int y) {
        return rowAt(y).filter(row -> row.spot().isEmpty()).isPresent();
    }

    /** All words of the label that is there, if some of them have no room. */
    public Optional<String> hidden(int y) {
        return rowAt(y).filter(row -> shown < LabelWidths.COLUMNS || isClipped(row.widths()))
                .map(row -> row.wording().whole());
    }

    boolean isClipped(LabelWidths widths) {
        return widths.name() > columns.name();
    }

    private Optional<LabelRow> row(Place place, String id) {
        return rows.stream().filter(row -> row.isOf(place, id)).findFirst();
    }

    /** Where a block's amount stands; where amounts have no room, its name. */
    public Optional<Rectangle> amountBox(Place place, String id) {
        int edge = sizes.edge();
        return row(place, id)
                .map(row -> shown > 1
                        ? new Rectangle(edge + columns.name() + sizes.gap(), top(row), columns.amount(), rowHeight)
                        : new Rectangle(edge, top(row), columns.name(), rowHeight));
    }

    public Optional<BlockWording> wording(Place place, String id) {
        return row(place, id).map(LabelRow::wording);
    }

    /** Where a block's label stands, with all its columns. */
    public Optional<Rectangle> box(Place place, String id) {
        return row(place, id).map(row -> new Rectangle(0, top(row), width(), rowHeight));
    }

    int top(LabelRow row) {
        return (int) Math.round(row.y() - rowHeight / 2.0);
    }
}
