package thrumwright.output.card;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.output.page.Part;
import thrumwright.output.page.TextPart;
import thrumwright.sheet.card.CardKey;

/** What signs mean, in columns that are filled from above, one after another. */
record KeyFlow(List<CardKey> keys, CardStyle style) implements Part {
    private static final double COLUMN = 200;
    private static final double BETWEEN = 12;

    /** A word in its place in a paragraph. */
    private record Placed(String text, Font font, double x, int line) {}

    private int columns(double width) {
        return (int) Math.max(1, Math.min(keys.size(), Math.floor(width / COLUMN)));
    }

    private double column(double width) {
        return (width + BETWEEN) / columns(width) - BETWEEN;
    }

    /** The first is the one that matters most. */
    private Font font(CardKey key, boolean sign) {
        return sign || key.equals(keys.get(0)) ? style.strong() : style.small();
    }

    private List<Placed> words(CardKey key, double width) {
        List<Placed> placed = new ArrayList<>();
        List<String> words = new ArrayList<>(List.of(key.sign().replace(' ', '\u00a0')));
        words.addAll(List.of(key.meaning().split(" ")));
        double x = 0;
        int line = 0;
        for (String word : words) {
            Font font = font(key, placed.isEmpty());
            double wide = TextPart.width(word, font);
            if (x > 0 && x + wide > width) {
                x = 0;
                line++;
            }
            placed.add(new Placed(word, font, x, line));
            x += wide + TextPart.width(" ", style.small()) * (placed.size() == 1 ? 1.8 : 1);
        }
        return placed;
    }

    private int lines(CardKey key, double column) {
        List<Placed> words = words(key, column);
        return words.get(words.size() - 1).line() + 1;
    }

    /** The fewest lines in which all columns hold all keys. */
    private int lines(double width) {
        int lines = 1;
        while (columnsFor(lines, width) > columns(width)) {
            lines++;
        }
        return lines;
    }

    private int columnsFor(int most, double width) {
        int columns = 1;
        int used = 0;
        for (CardKey key : keys) {
            int needed = lines(key, column(width));
            if (needed > most) {
                return Integer.MAX_VALUE;
            }
            if (used + needed > most) {
                columns++;
                used = 0;
            }
            used += needed;
        }
        return columns;
    }

    @Override
    public double height(double width) {
        return keys.isEmpty() ? 0 : lines(width) * style.smallLine() + 3;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        int most = keys.isEmpty() ? 0 : lines(width);
        double column = column(width);
        double left = x;
        int used = 0;
        for (CardKey key : keys) {
            int needed = lines(key, column);
            if (used + needed > most) {
                left += column + BETWEEN;
                used = 0;
            }
            double top = y + used * style.smallLine();
            double at = left;
            String says = key.sign() + ": " + key.meaning();
            LargeWord.item(g, says, () -> words(key, column).forEach(word -> paint(g, word, at, top)));
            used += needed;
        }
    }

    private void paint(Graphics2D g, Placed word, double x, double y) {
        g.setFont(word.font());
        g.setColor(style.palette().ink());
        double baseline = y + word.line() * style.smallLine() + style.small().getSize2D() * 0.9;
        g.drawString(word.text(), (float) (x + word.x()), (float) baseline);
    }
}
