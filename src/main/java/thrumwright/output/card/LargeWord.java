package thrumwright.output.card;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;

/**
 * Words that stay in one line.
 *
 * @param says what is heard instead; empty if it is heard elsewhere
 * @param right whether they stand at the end of their line
 */
record LargeWord(String text, Font font, String says, boolean right) {
    double width() {
        return TextPart.width(text, font);
    }

    /** These words in as many lines as so many points of width ask for. */
    List<LargeWord> broken(double width) {
        if (width() <= width) {
            return List.of(this);
        }
        List<LargeWord> lines = new ArrayList<>();
        for (String line : new TextPart(text, font, null).lines(width)) {
            lines.add(new LargeWord(line, font, lines.isEmpty() ? says : "", right));
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
