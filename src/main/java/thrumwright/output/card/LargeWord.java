package thrumwright.output.card;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;

/**
 * Words that stay in one line.
 *
 * @param width points
 * @param says what is heard instead; empty if it is heard elsewhere
 * @param right whether they stand at the end of their line
 */
record LargeWord(String text, Font font, double width, String says, boolean right) {
    /** How far the ink of a last letter, such as an f, stands out, times the type size. */
    private static final double OVERHANG = 0.03;

    static LargeWord of(String text, Font font, String says, CardStyle style) {
        return new LargeWord(text, font, style.width(text, font), says, false);
    }

    /** The same at the end of its line. */
    LargeWord atEnd() {
        return new LargeWord(text, font, width, says, true);
    }

    /** These words in as many lines as so many points of width ask for. */
    List<LargeWord> broken(double room, CardStyle style) {
        double most = room - OVERHANG * font.getSize2D();
        if (width <= most) {
            return List.of(this);
        }
        List<LargeWord> lines = new ArrayList<>();
        for (String line : style.widths().lines(text, font, most)) {
            lines.add(new LargeWord(line, font, style.width(line, font), lines.isEmpty() ? says : "", right));
        }
        return lines;
    }

    void paint(Graphics2D g, double x, double baseline) {
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setFont(font);
        g.drawString(text, (float) x, (float) baseline);
    }

    /** Paints something as an item of a list that says something; what says nothing is an ornament. */
    static void item(Graphics2D g, String says, Runnable paint) {
        if (says.isEmpty()) {
            Structured.as(g, Role.ORNAMENT, paint);
            return;
        }
        Runnable entry = () -> Structured.as(g, Role.ENTRY, () -> {
            Structured.spell(g, says);
            paint.run();
        });
        Structured.as(g, Role.LIST, () -> Structured.as(g, Role.ITEM, entry));
    }
}
