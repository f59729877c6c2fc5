package thrumwright.output.card;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.drawing.step.StepPainter;
import thrumwright.output.card.CardBreaks.Run;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.sheet.card.CardRow;
import thrumwright.sheet.card.CardSaying;
import thrumwright.sheet.card.YarnLetters;

/**
 * One card: its head, its rows from below to above beside the stack, and the lines where it begins and goes on.
 *
 * @param index which card of its end, from 0
 * @param runs the rows of all cards of its end
 * @param height of the whole card, points
 */
record CardPart(CardContent content, int index, List<Run> runs, double height) implements Part {
    private static final double MOST_ROW = 190;
    /** In narrower drawings measures find no room; the row has them. */
    private static final double WORDED = 90;

    /** A row in its place. */
    record PlacedRow(int row, Rectangle2D box) {}

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
    List<PlacedRow> rows(double x, double y) {
        double bottom = y + height - below();
        double room = bottom - y - head().height() - above();
        int count = run().to() - run().from();
        double spare = Math.max(0, room - content.height(run().from(), run().to())) / Math.max(1, count);
        List<PlacedRow> placed = new ArrayList<>();
        double low = bottom;
        for (int i = run().from(); i < run().to(); i++) {
            double least = content.height(i);
            double high = Math.max(least, Math.min(MOST_ROW, least + spare));
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
        stack(g, rows, x, bottom, bottom - top);
        if (run().from() == 0) {
            content.begin().paint(g, x, bottom, width);
            times(g, rows, x + width, bottom + content.beginHeight() - 8);
        } else {
            edge(g, "came-from", run().from() - 1, index, x, bottom + 2);
        }
        rule(g, x, bottom, width);
        rows.forEach(row -> row(g, row));
        if (last()) {
            content.after().paint(g, x, top - above(), width);
        } else {
            edge(g, "goes-on", run().to(), index + 2, x, top - above());
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

    private void rule(Graphics2D g, double x, double y, double width) {
        g.setColor(style().palette().faint());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Line2D.Double(x, y, x + width, y));
    }

    private EndPlan end() {
        return content.plan().end(content.card().place());
    }

    private void stack(Graphics2D g, List<PlacedRow> rows, double x, double bottom, double height) {
        if (rows.isEmpty()) {
            return;
        }
        CardStack stack = stackOf(rows);
        double foot = bottom - 2;
        CardColumns columns = content.columns();
        Rectangle2D box = new Rectangle2D.Double(x, bottom - height, columns.stack(), height);
        Structured.figure(g, says(rows), box, () -> {
            stack.paint(g, x + 1, foot, columns.stack() - 2);
            for (PlacedRow row : rows) {
                double from = stack.middle(row(row).block(), foot);
                lead(
                        g,
                        x + columns.stack(),
                        from,
                        x + columns.tagRight() - tagWidth(row),
                        row.box().getCenterY());
            }
        });
    }

    /** How much higher than the weaving the stack is, where there is room for that. */
    private void times(Graphics2D g, List<PlacedRow> rows, double right, double baseline) {
        double times = rows.isEmpty() ? 0 : stackOf(rows).times();
        String text = content.phrases()
                .say("stack", Map.of("times", content.plan().piece().shown().decimals(times, 1)));
        LargeWord word = LargeWord.of(text, style().small(), text, style());
        double free = content.width() - content.begin().widest(content.width());
        if (times > 0 && word.width() < free - 10) {
            g.setColor(style().palette().faint());
            LargeWord.item(g, text, () -> word.paint(g, right - word.width(), baseline));
        }
    }

    private CardStack stackOf(List<PlacedRow> rows) {
        List<BlockPlan> blocks = rows.stream().map(row -> row(row).block()).toList();
        double high =
                rows.get(0).box().getMaxY() - rows.get(rows.size() - 1).box().getMinY();
        YarnLetters letters = YarnLetters.of(content.plan().piece());
        return CardStack.within(end(), blocks, high - 4, letters, style());
    }

    private double tagWidth(PlacedRow row) {
        return new NumberTag(style()).width(row(row).number());
    }

    private CardRow row(PlacedRow placed) {
        return content.card().rows().get(placed.row());
    }

    private String says(List<PlacedRow> rows) {
        List<String> names = rows.stream()
                .map(this::row)
                .map(row -> content.phrases().say("stack.block", Map.of("block", row.name(), "step", row.number())))
                .toList();
        return content.phrases().say("stack.says", Map.of("blocks", String.join(", ", names)));
    }

    private void lead(Graphics2D g, double fromX, double fromY, double toX, double toY) {
        Path2D lead = new Path2D.Double();
        lead.moveTo(fromX, fromY);
        lead.lineTo(fromX + 4, fromY);
        lead.lineTo(fromX + content.columns().leads() - 3, toY);
        lead.lineTo(toX, toY);
        g.setColor(style().palette().ink());
        g.setStroke(new BasicStroke(0.9f));
        g.draw(lead);
    }

    private void row(Graphics2D g, PlacedRow placed) {
        CardRow row = row(placed);
        Rectangle2D box = placed.box();
        rule(
                g,
                box.getX() + content.columns().stack() + content.columns().leads(),
                box.getMinY(),
                box.getWidth() - content.columns().stack() - content.columns().leads());
        String name = content.phrases().say("step", Map.of("number", row.number(), "name", row.name()));
        RowFace face = content.faces().get(placed.row());
        double y = box.getCenterY() - face.height() / 2;
        double left = box.getX() + content.columns().wordsLeft();
        Structured.as(g, Role.STEP, () -> {
            Structured.spell(g, name);
            double right = box.getX() + content.columns().tagRight();
            new NumberTag(style()).paint(g, row.number(), right, box.getCenterY());
            face.paintName(g, left, y, style());
        });
        face.paint(g, left, y, style());
        picture(g, row, box);
    }

    private void picture(Graphics2D g, CardRow row, Rectangle2D box) {
        double width = content.columns().picture();
        if (!CardContent.drawn(row) || width == 0) {
            return;
        }
        double height = Math.min(box.getHeight() - 2 * content.padding(), width * 0.8);
        Rectangle2D place = new Rectangle2D.Double(
                box.getX() + content.columns().pictureLeft(), box.getCenterY() - height / 2, width, height);
        Structured.figure(
                g,
                row.pictureSays(),
                place,
                () -> new StepPainter(g, style().palette(), width < WORDED ? null : style().small())
                        .paint(place, content.plan(), end(), row.block()));
    }
}
