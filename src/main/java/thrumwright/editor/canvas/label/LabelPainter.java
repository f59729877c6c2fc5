package thrumwright.editor.canvas.label;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.util.List;
import javax.swing.UIManager;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;

/** Paints labels, each with a line to its block. */
public final class LabelPainter {
    /** So many lines lie too close for their edges to be smoothed in the time there is. */
    private static final int DENSE = 40;

    private final Graphics2D g;
    private final LabelList list;
    private final Selection selection;
    private final Sighting sighting;

    /**
     * Where the canvas lies beside the list.
     *
     * @param by from heights on the canvas to heights in the list, pixels
     * @param top where what is seen of it begins in the list, pixels
     * @param bottom where that ends, pixels
     */
    public record Sighting(int by, int top, int bottom) {
        boolean sees(double height) {
            return height + by >= top && height + by <= bottom;
        }
    }

    /** @param g smooths letters from now on */
    public LabelPainter(Graphics2D g, LabelList list, Selection selection, Sighting sighting) {
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        this.g = g;
        this.list = list;
        this.selection = selection;
        this.sighting = sighting;
    }

    /**
     * As much of it as the clip lets through.
     *
     * @param faint the colour of lines to blocks
     * @param width where the blocks are, pixels
     * @param topFollows whether what the top has is only repeated
     */
    public void paint(Color faint, int width, boolean topFollows) {
        Rectangle part = g.getClipBounds();
        List<LabelRow> seen = list.rows().stream()
                .filter(row -> part == null || meets(row, part))
                .toList();
        List<LabelRow> led =
                list.rows().stream().filter(row -> sighting.sees(row.target())).toList();
        leaders(led.stream().filter(row -> !selected(row)).toList(), width, faint, 1, led.size() > DENSE);
        Color strong = UIManager.getColor("Thrumwright.selected");
        leaders(led.stream().filter(this::selected).toList(), width, strong, 2, led.size() > DENSE);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        LabelFonts fonts = LabelFonts.now();
        Color ink = UIManager.getColor("Label.foreground");
        Color quiet = UIManager.getColor("Thrumwright.quiet");
        for (LabelRow row : seen) {
            selection(row);
            g.setColor(isQuiet(row, topFollows) ? quiet : ink);
            texts(base(fonts.plain(), list.top(row), list.rowHeight()), row.wording(), row.widths(), fonts);
        }
    }

    /** The titles of the columns, in a strip so many pixels high. */
    public void titles(Texts texts, int height) {
        g.setColor(UIManager.getColor("Thrumwright.quiet"));
        Font plain = LabelFonts.now().plain();
        Font small = plain.deriveFont(plain.getSize2D() - 1.5f);
        LabelFonts fonts = new LabelFonts(small, small);
        LabelMaker maker = new LabelMaker(texts, list.sizes(), fonts, g::getFontMetrics);
        texts(base(small, 0, height), maker.titles(), maker.widths(maker.titles()), fonts);
    }

    private int base(Font font, int top, int height) {
        FontMetrics metrics = g.getFontMetrics(font);
        return top + (height + metrics.getAscent() - metrics.getDescent()) / 2;
    }

    private boolean meets(LabelRow row, Rectangle part) {
        return row.y() - list.rowHeight() <= part.getMaxY() && row.y() + list.rowHeight() >= part.getMinY();
    }

    private void selection(LabelRow row) {
        if (selected(row)) {
            int top = list.top(row);
            g.setColor(UIManager.getColor("Thrumwright.selectedBackground"));
            g.fillRoundRect(2, top, list.width() - 2, list.rowHeight(), 6, 6);
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            g.fillRoundRect(2, top + 3, 3, list.rowHeight() - 6, 3, 3);
        }
    }

    private boolean isQuiet(LabelRow row, boolean topFollows) {
        return !selected(row)
                && row.spot().map(spot -> isQuiet(spot, topFollows)).orElse(true);
    }

    /** What is not woven by itself, or comes out again. */
    private static boolean isQuiet(BlockSpot spot, boolean topFollows) {
        return spot.plan().comesOut() || topFollows && spot.place() == Place.TOP;
    }

    private boolean selected(LabelRow row) {
        return row.spot().filter(spot -> selection.has(spot.place(), spot.id())).isPresent();
    }

    /** Lines from labels to their blocks, all at once, since each by itself takes long. */
    private void leaders(List<LabelRow> rows, int width, Color colour, int thick, boolean dense) {
        Path2D lines = new Path2D.Double(Path2D.WIND_NON_ZERO, Math.max(1, 4 * rows.size()));
        int from = list.width();
        for (LabelRow row : rows) {
            double target = row.target() + sighting.by();
            lines.moveTo(from + 3, row.y());
            lines.lineTo(from + 9, row.y());
            lines.lineTo(width - 7, target);
            lines.lineTo(width, target);
        }
        g.setColor(colour);
        g.setStroke(new BasicStroke(thick));
        g.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING,
                dense ? RenderingHints.VALUE_ANTIALIAS_OFF : RenderingHints.VALUE_ANTIALIAS_ON);
        g.draw(lines);
    }

    private void texts(int base, BlockWording wording, LabelWidths widths, LabelFonts fonts) {
        LabelWidths columns = list.columns();
        g.setFont(fonts.strong());
        String name =
                list.isClipped(widths) ? clipped(wording.name(), g.getFontMetrics(), columns.name()) : wording.name();
        g.drawString(name, list.sizes().edge(), base);
        g.setFont(fonts.plain());
        int right = list.sizes().edge() + columns.name();
        for (int i = 1; i < list.shown(); i++) {
            right += list.sizes().gap() + columns.of(i);
            g.drawString(wording.of(i), right - widths.of(i), base);
        }
    }

    private static String clipped(String text, FontMetrics metrics, int width) {
        String shown = text;
        while (shown.length() > 1 && metrics.stringWidth(shown) > width) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        return shown;
    }
}
