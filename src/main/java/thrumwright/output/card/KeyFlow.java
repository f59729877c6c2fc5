package thrumwright.output.card;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.sheet.card.CardKey;

/**
 * What signs mean, in columns that are filled from above, one after another.
 *
 * @param lines of each column
 * @param column width of one, points
 */
record KeyFlow(List<Paragraph> paragraphs, int lines, double column, CardStyle style) {
    private static final double COLUMN = 200;
    private static final double BETWEEN = 12;

    /** A word in its place in a paragraph. */
    private record Placed(String text, Font font, double x, int line) {}

    /** What one sign means. */
    private record Paragraph(CardKey key, List<Placed> words) {
        int lines() {
            return words.get(words.size() - 1).line() + 1;
        }
    }

    static KeyFlow of(List<CardKey> keys, double width, CardStyle style) {
        int columns = (int) Math.max(1, Math.min(keys.size(), Math.floor(width / COLUMN)));
        double column = (width + BETWEEN) / columns - BETWEEN;
        List<Paragraph> paragraphs = new ArrayList<>();
        for (CardKey key : keys) {
            // the first is the one that matters most
            Font font = paragraphs.isEmpty() ? style.strong() : style.small();
            paragraphs.add(new Paragraph(key, words(key, font, column, style)));
        }
        int lines = 1;
        while (columns(paragraphs, lines) > columns) {
            lines++;
        }
        return new KeyFlow(paragraphs, lines, column, style);
    }

    private static List<Placed> words(CardKey key, Font font, double width, CardStyle style) {
        List<Placed> placed = new ArrayList<>();
        double space = style.width(" ", style.small());
        String sign = key.sign().replace(' ', '\u00a0');
        placed.add(new Placed(sign, style.strong(), 0, 0));
        double x = style.width(sign, style.strong()) + 1.8 * space;
        int line = 0;
        for (String word : key.meaning().split(" ")) {
            double wide = style.width(word, font);
            if (x > 0 && x + wide > width) {
                x = 0;
                line++;
            }
            placed.add(new Placed(word, font, x, line));
            x += wide + space;
        }
        return placed;
    }

    /** How many columns of so many lines hold all. */
    private static int columns(List<Paragraph> paragraphs, int most) {
        int columns = 1;
        int used = 0;
        for (Paragraph paragraph : paragraphs) {
            if (paragraph.lines() > most) {
                return Integer.MAX_VALUE;
            }
            if (used + paragraph.lines() > most) {
                columns++;
                used = 0;
            }
            used += paragraph.lines();
        }
        return columns;
    }

    double height() {
        return paragraphs.isEmpty() ? 0 : lines * style.smallLine() + 3;
    }

    void paint(Graphics2D g, double x, double y) {
        double left = x;
        int used = 0;
        for (Paragraph paragraph : paragraphs) {
            if (used + paragraph.lines() > lines) {
                left += column + BETWEEN;
                used = 0;
            }
            double top = y + used * style.smallLine();
            double at = left;
            String says = paragraph.key().sign() + ": " + paragraph.key().meaning();
            LargeWord.item(g, says, () -> paragraph.words().forEach(word -> paint(g, word, at, top)));
            used += paragraph.lines();
        }
    }

    private void paint(Graphics2D g, Placed word, double x, double y) {
        g.setFont(word.font());
        g.setColor(style.palette().ink());
        double baseline = y + word.line() * style.smallLine() + style.small().getSize2D() * 0.9;
        g.drawString(word.text(), (float) (x + word.x()), (float) baseline);
    }
}
