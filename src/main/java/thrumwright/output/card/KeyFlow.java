package thrumwright.output.card;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.output.page.Part;
import thrumwright.output.page.TextPart;
import thrumwright.sheet.card.CardKey;

/** What signs mean, one after another in lines. */
record KeyFlow(List<CardKey> keys, CardStyle style) implements Part {
    /** A word in its place. */
    private record Placed(int key, String text, Font font, double x, int line) {}

    private List<Placed> placed(double width) {
        List<Placed> placed = new ArrayList<>();
        double space = TextPart.width(" ", style.small());
        double x = 0;
        int line = 0;
        for (int i = 0; i < keys.size(); i++) {
            List<String> words = new ArrayList<>(List.of(keys.get(i).sign().replace(' ', '\u00a0')));
            words.addAll(List.of(keys.get(i).meaning().split(" ")));
            for (int k = 0; k < words.size(); k++) {
                Font font = k == 0 ? style.strong() : style.small();
                double wide = TextPart.width(words.get(k), font);
                if (x > 0 && x + wide > width) {
                    x = 0;
                    line++;
                }
                placed.add(new Placed(i, words.get(k), font, x, line));
                x += wide + space * (k == words.size() - 1 ? 3 : k == 0 ? 1.6 : 1);
            }
        }
        return placed;
    }

    @Override
    public double height(double width) {
        List<Placed> placed = placed(width);
        return placed.isEmpty() ? 0 : (placed.get(placed.size() - 1).line() + 1) * style.smallLine() + 2;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        List<Placed> all = placed(width);
        for (int i = 0; i < keys.size(); i++) {
            int key = i;
            String says = keys.get(i).sign() + ": " + keys.get(i).meaning();
            LargeWord.item(
                    g,
                    says,
                    () -> all.stream().filter(word -> word.key() == key).forEach(word -> paint(g, word, x, y)));
        }
    }

    private void paint(Graphics2D g, Placed word, double x, double y) {
        g.setFont(word.font());
        g.setColor(style.palette().ink());
        double baseline = y + word.line() * style.smallLine() + style.small().getSize2D() * 0.9;
        g.drawString(word.text(), (float) (x + word.x()), (float) baseline);
    }
}
