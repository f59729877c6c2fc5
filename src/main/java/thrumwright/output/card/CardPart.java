package thrumwright.output.card;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.output.card.CardBreaks.Run;
import thrumwright.output.page.Part;
import thrumwright.sheet.card.CardSaying;

/**
 * One card: its head, its rows from below to above beside the stack, and the lines where it begins and goes on.
 *
 * @param index which card of its end, from 0
 * @param runs the rows of all cards of its end
 * @param height of the whole card, points
 */
record CardPart(CardContent content, int index, List<Run> runs, double height) implements Part {

    private Run run() {
        return runs.get(index);
    }

    private CardStyle style() {
        return content.style();
    }

    private CardHead head() {
        Map<String, Integer> values = Map.of("card", index + 1, "cards", runs.size());
        Optional<CardSaying> number = runs.size() == 1
                ? Optional.empty()
                : Optional.of(new CardSaying(
                        content.phrases().say("of", values), content.phrases().say("of.says", values)));
        return content.head(number);
    }

    @Override
    public double height(double width) {
        return height;
    }

    private double below() {
        return run().from() == 0 ? content.beginHeight() : CardBreaks.EDGE;
    }

    private double above() {
        return last() ? content.afterHeight() : CardBreaks.EDGE;
    }

    private boolean last() {
        return index == runs.size() - 1;
    }

    /** The rows from the lowest, with the room that is to spare shared between them. */
    private List<PlacedRow> rows(double x, double y) {
        double bottom = y + height - below();
        double room = bottom - y - head().height() - above();
        double spare = Math.max(0, room - content.height(run().from(), run().to()));
        List<PlacedRow> placed = new ArrayList<>();
        double low = bottom;
        for (int i = run().from(); i < run().to(); i++) {
            double high = content.height(i) + spare / (run().to() - run().from());
            placed.add(new PlacedRow(i, new Rectangle2D.Double(x, low - high, content.width(), high)));
            low -= high;
        }
        return placed;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        head().paint(g, x, y);
        List<PlacedRow> rows = rows(x, y);
        double bottom = y + height - below();
        double top = rows.isEmpty() ? bottom : rows.get(rows.size() - 1).box().getMinY();
        CardSide side = new CardSide(content, rows);
        side.paint(g);
        begin(g, side, x, bottom);
        rows.forEach(row -> new RowPainter(g, content, row).paint());
        after(g, x, top - above());
    }

    /** Below the first row: where the work begins, or the card from which it goes on. */
    private void begin(Graphics2D g, CardSide side, double x, double bottom) {
        if (run().from() > 0) {
            edge(g, "came-from", run().from() - 1, index, x, bottom + 2);
        } else {
            content.begin().paint(g, x, bottom, content.width());
            times(g, side.times(), x + content.width(), bottom + content.beginHeight() - 8);
        }
        g.setColor(style().palette().faint());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Line2D.Double(x, bottom, x + content.width(), bottom));
    }

    /** Above the last row: the design, or the card on which it goes on. */
    private void after(Graphics2D g, double x, double y) {
        if (last()) {
            content.after().paint(g, x, y, content.width());
        } else {
            edge(g, "goes-on", run().to(), index + 2, x, y);
        }
    }

    private void edge(Graphics2D g, String key, int row, int card, double x, double y) {
        int number = content.card().rows().get(row).number();
        Map<String, Integer> values = Map.of("step", number, "card", card);
        g.setColor(style().palette().ink());
        LargeWord shown = LargeWord.of(
                content.phrases().say(key, values), style().strong().deriveFont(13.5f), "", style());
        LargeWord.item(g, content.phrases().say(key + ".says", values), () -> shown.paint(g, x, y + 14));
    }

    /** How much higher than the weaving the stack is, where there is room for that. */
    private void times(Graphics2D g, double times, double right, double baseline) {
        String text = content.phrases()
                .say("stack", Map.of("times", content.plan().piece().shown().decimals(times, 1)));
        LargeWord word = LargeWord.of(text, style().small(), text, style());
        double free = content.width() - content.begin().widest(content.width());
        if (times > 0 && word.width() < free - 10) {
            g.setColor(style().palette().faint());
            LargeWord.item(g, text, () -> word.paint(g, right - word.width(), baseline));
        }
    }
}
