package thrumwright.editor.canvas.painted;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Passing;
import thrumwright.block.Row;
import thrumwright.block.Side;
import thrumwright.drawing.Arrow;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.canvas.seen.RowRoom;
import thrumwright.plan.Work;

/**
 * Close up, beside each row at the side where it begins: which way it runs, and whether it passes over or under the
 * outermost end there. Never printed.
 */
record RowNotes(Graphics2D g, Showing showing) {
    /** Lower rows have no note, pixels. */
    private static final double LOWEST = 7;

    /** From the cloth's tails to the arrow, and how long that is, pixels. */
    private static final double BESIDE = 3;

    private static final double ARROW = 12;
    private static final double HEAD = 3;
    private static final double DOT = 2.2;

    void paint() {
        showing.map().notes().ifPresent(this::paint);
    }

    private void paint(RowRoom room) {
        g.setFont(g.getFont().deriveFont(g.getFont().getSize2D() - 1));
        for (BlockSpot spot : showing.map().spots()) {
            spot.plan().work().ifPresent(work -> rows(spot, work, room));
        }
    }

    private void rows(BlockSpot spot, Work work, RowRoom room) {
        List<Row> rows = work.rows();
        double each = spot.high() / Math.max(1, rows.size());
        if (each < LOWEST) {
            return;
        }
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double y = spot.bottom() - (i + 0.5) * each;
            if (seen(y, each) && !crossed(work, room.aside(row.from()))) {
                row(row.meets(work.setting().ends()), row.from(), y, each, room);
            }
        }
    }

    /** Whether a row so high is to be painted: often only a tile of the cloth is painted anew. */
    private boolean seen(double y, double each) {
        Rectangle seen = showing.seen();
        return y > seen.getMinY() - each
                && y < seen.getMaxY() + each
                && g.hitClip(seen.x, (int) (y - each) - 1, seen.width, (int) (2 * each) + 3);
    }

    /** A cord to the posts lies where the notes would stand, unless they stand beyond the posts. */
    private boolean crossed(Work work, double aside) {
        return work.block().tied() && aside < showing.map().picture().reach().outermost();
    }

    private void row(Optional<Passing> meets, Side from, double y, double each, RowRoom room) {
        boolean left = from == Side.LEFT;
        double inward = left ? 1 : -1;
        double near = beside(from, room.aside(from));
        double edge = near - inward * BESIDE;
        double far = edge - inward * (ARROW + BESIDE);
        double farthest = near - inward * room.wide();
        Rectangle pictured = showing.pictured();
        if (Math.min(edge, farthest) < pictured.getMinX() - 1 || Math.max(edge, farthest) > pictured.getMaxX() + 1) {
            return;
        }
        new Arrow(g, showing.palette()).level(edge - inward * ARROW, edge, y, HEAD);
        meets.ifPresent(passing -> {
            if (room.told(each) && each >= g.getFontMetrics().getAscent()) {
                words(passing, far, y, left);
            } else {
                dot(passing, far - inward * DOT, y);
            }
        });
    }

    /** Beside the cloth, pixels of the canvas; from mm. */
    private double beside(Side side, double aside) {
        CanvasMap map = showing.map();
        return side == Side.LEFT ? map.x(-aside) : map.x(map.picture().span() + aside);
    }

    private void words(Passing passing, double far, double y, boolean left) {
        FontMetrics metrics = g.getFontMetrics();
        String words = showing.texts().say(passing == Passing.OVER ? "canvas.row.over" : "canvas.row.under");
        double x = left ? far - metrics.stringWidth(words) : far;
        g.drawString(words, (float) x, (float) (y + (metrics.getAscent() - metrics.getDescent()) / 2.0));
    }

    /** Where rows are too low for words: full for over, empty for under. */
    private void dot(Passing passing, double x, double y) {
        Ellipse2D dot = new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT);
        g.setStroke(new BasicStroke(1));
        if (passing == Passing.OVER) {
            g.fill(dot);
        }
        g.draw(dot);
    }
}
