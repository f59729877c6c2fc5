package thrumwright.output.card;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import thrumwright.sheet.card.CardRow;

/**
 * The words of a row, set: large ones in lines, boxes to tick and small print beside or below them.
 *
 * @param ticks where the boxes lie, if there are any
 * @param small where the small print lies
 * @param top free above all of it, points
 */
record RowFace(
        CardRow row,
        LargeLines large,
        Optional<TickGrid> grid,
        Rectangle2D ticks,
        SmallPrint print,
        Rectangle2D small,
        double top,
        double height) {
    /** With so many points free above it. */
    RowFace lowered(double by) {
        return new RowFace(row, large, grid, ticks, print, small, top + by, height + by);
    }

    /** Its name alone, which is heard as a heading with the number. */
    void paintName(Graphics2D g, double x, double y, CardStyle style) {
        g.setColor(style.palette().ink());
        large.each((word, left, baseline) -> {
            if (word.says().isEmpty()) {
                word.paint(g, x + left, y + top + baseline);
            }
        });
    }

    /** All but its name. */
    void paint(Graphics2D g, double x, double y, CardStyle style) {
        large.each((word, left, baseline) -> {
            if (!word.says().isEmpty()) {
                g.setColor(style.palette().ink());
                LargeWord.item(g, word.says(), () -> word.paint(g, x + left, y + top + baseline));
            }
        });
        grid.ifPresent(boxes -> boxes.paint(g, x + ticks.getX(), y + top + ticks.getY(), row.done(), style.palette()));
        print.paint(g, x + small.getX(), y + top + small.getY(), small.getWidth());
    }
}
