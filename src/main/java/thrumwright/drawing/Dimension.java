package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/**
 * Draws a measure: a line between two short bars, with what it comes to beside it.
 *
 * @param font null for no words
 */
public record Dimension(Graphics2D g, Color ink, Font font) {
    /** How thick its lines are, page units. */
    public static final double THICK = 0.9;

    private static final double BAR = 4;
    private static final double TIP = 3.5;

    /** From one height on the page to another, in any page units, the words to the right of it. */
    public void upright(double x, double from, double to, String measure) {
        thin();
        g.draw(new Line2D.Double(x, from, x, to));
        ends(x, from, to);
        if (font != null) {
            g.setFont(font);
            g.drawString(measure, (float) (x + BAR + 3), (float) ((from + to) / 2 + font.getSize2D() * 0.35));
        }
    }

    /**
     * The short bars and the tips of {@link #upright}, for who draws the line between them.
     *
     * @param x page units, any sign
     * @param from height on the page, page units, any sign, and so the other
     */
    public void ends(double x, double from, double to) {
        thin();
        bar(x, from);
        bar(x, to);
        if (Math.abs(from - to) > 4 * TIP) {
            tip(x, Math.min(from, to), 1);
            tip(x, Math.max(from, to), -1);
        }
    }

    /** From one place across the page to another, in any page units, the words below or above the middle of it. */
    public void level(double from, double to, double y, boolean below, String measure) {
        thin();
        g.draw(new Line2D.Double(from, y, to, y));
        g.draw(new Line2D.Double(from, y - BAR, from, y + BAR));
        g.draw(new Line2D.Double(to, y - BAR, to, y + BAR));
        if (font != null) {
            g.setFont(font);
            double wide =
                    font.getStringBounds(measure, g.getFontRenderContext()).getWidth();
            double line = below ? y + BAR / 2 + font.getSize2D() : y - BAR / 2 - 2;
            g.drawString(measure, (float) ((from + to) / 2 - wide / 2), (float) line);
        }
    }

    private void bar(double x, double y) {
        g.draw(new Line2D.Double(x - BAR, y, x + BAR, y));
    }

    private void tip(double x, double y, int down) {
        Path2D tip = new Path2D.Double();
        tip.moveTo(x, y);
        tip.lineTo(x - TIP * 0.4, y + down * TIP);
        tip.lineTo(x + TIP * 0.4, y + down * TIP);
        tip.closePath();
        g.fill(tip);
    }

    private void thin() {
        g.setColor(ink);
        g.setStroke(new BasicStroke((float) THICK));
    }
}
