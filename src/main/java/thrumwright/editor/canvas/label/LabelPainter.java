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
import thrumwright.editor.look.Smooth;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;

/** Paints labels, each with a line to its block. */
public final class LabelPainter {
    /** So many lines lie too close for their edges to be smoothed in the time there is. */
    private static final int DENSE = 40;

    /** So many lines may be as steep as they come. */
    private static final int FEW = 20;

    /** Steeper lines lie on their neighbours, as so many times as high as they are wide. */
    private static final double STEEP = 4;

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
        Smooth.letters(g);
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
        // a line to a row that can't be seen leads nowhere
        List<LabelRow> led =
                seen.stream().filter(row -> sighting.sees(row.target())).toList();
        leaders(
                led.stream()
                        .filter(row -> !selected(row) && followed(row, width, led.size()))
                        .toList(),
                width,
                faint,
                1,
                led.size() > DENSE);
        Color strong = UIManager.getColor("Thrumwright.selected");
        leaders(led.stream().filter(this::selected).toList(), width, strong, 2, led.size() > DENSE);
        if (part == null || part.x < list.width()) {
            rows(seen, topFollows);
        }
    }

    private void rows(List<LabelRow> rows, boolean topFollows) {
        Smooth.lines(g);
        LabelFonts fonts = LabelFonts.now();
        Color ink = UIManager.getColor("Label.foreground");
        Color quiet = UIManager.getColor("Thrumwright.quiet");
        for (LabelRow row : rows) {
            selection(row);
            g.setColor(isQuiet(row) ? quiet : ink);
            boolean repeated =
                    topFollows && row.spot().filter(LabelPainter::ofTheTop).isPresent();
            LabelFonts own = repeated ? new LabelFonts(fonts.plain(), fonts.plain()) : fonts;
            texts(base(fonts.plain(), list.top(row), list.rowHeight()), row.wording(), row.widths(), own);
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

    /** What comes out again; what only follows the start has thinner letters instead. */
    private boolean isQuiet(LabelRow row) {
        return !selected(row)
                && row.spot().filter(spot -> spot.plan().comesOut()).isPresent();
    }

    private static boolean ofTheTop(BlockSpot spot) {
        return spot.place() == Place.TOP;
    }

    private boolean selected(LabelRow row) {
        return row.spot().filter(spot -> selection.has(spot.place(), spot.id())).isPresent();
    }

    /** Whether an eye can follow its line: many steep ones would only be a dark patch. */
    private boolean followed(LabelRow row, int width, int among) {
        double high = Math.abs(row.target() + sighting.by() - row.y());
        return among <= FEW || high <= STEEP * (width - list.width());
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
            lines.lineTo(width - 3, target);
            row.spot().ifPresent(spot -> bracket(lines, spot, width - 3));
        }
        g.setColor(colour);
        g.setStroke(new BasicStroke(thick));
        g.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING,
                dense ? RenderingHints.VALUE_ANTIALIAS_OFF : RenderingHints.VALUE_ANTIALIAS_ON);
        g.draw(lines);
    }

    /** As high as its block, so that a line can be followed to it. */
    private void bracket(Path2D lines, BlockSpot spot, double x) {
        double inset = Math.min(1, spot.high() / 4);
        double top = spot.top() + sighting.by() + inset;
        double bottom = spot.bottom() + sighting.by() - inset;
        lines.moveTo(x + 3, top);
        lines.lineTo(x, top);
        lines.lineTo(x, bottom);
        lines.lineTo(x + 3, bottom);
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
