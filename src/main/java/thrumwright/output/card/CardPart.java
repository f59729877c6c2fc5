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
        return new CardHead(content.card(), number, style());
    }

    @Override
    public double height(double width) {
        return height;
    }

    private double below() {
        return run().from() == 0 ? content.begin().height(content.width()) : CardBreaks.EDGE;
    }

    private double above() {
        return last() ? content.after().height(content.width()) : CardBreaks.EDGE;
    }

    private boolean last() {
        return index == runs.size() - 1;
    }

    /** The rows from the lowest, with the room that is to spare shared between them. */
    List<PlacedRow> rows(double x, double y) {
        double bottom = y + height - below();
        double room = bottom - y - head().height(content.width()) - above();
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
        head().paint(g, x, y, width);
        List<PlacedRow> rows = rows(x, y);
        double bottom = y + height - below();
        double top = rows.isEmpty() ? bottom : rows.get(rows.size() - 1).box().getMinY();
        stack(g, rows, x, bottom, bottom - top);
        if (run().from() == 0) {
            content.begin().paint(g, x, bottom, width);
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
        int number = content.card().rows().get(row).number().orElse(0);
        Map<String, Integer> values = Map.of("step", number, "card", card);
        g.setColor(style().palette().ink());
        LargeWord shown = new LargeWord(content.phrases().say(key, values), style().strong(), "", false);
        LargeWord.item(g, content.phrases().say(key + ".says", values), () -> shown.paint(g, x, y + 11));
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
        List<BlockPlan> blocks = rows.stream()
                .map(row -> content.card().rows().get(row.row()).block())
                .toList();
        YarnLetters letters = YarnLetters.of(content.plan().piece());
        CardStack stack = CardStack.within(end(), blocks, height - 4, letters, style());
        double foot = bottom - 2;
        CardColumns columns = content.columns();
        Rectangle2D box = new Rectangle2D.Double(x, bottom - height, columns.stack(), height);
        Structured.figure(g, says(rows), box, () -> {
            stack.paint(g, x + 1, foot, columns.stack() - 2);
            for (PlacedRow row : rows) {
                double from = stack.middle(content.card().rows().get(row.row()).block(), foot);
                lead(
                        g,
                        x + columns.stack(),
                        from,
                        x + columns.tagRight() - tagWidth(row),
                        row.box().getCenterY());
            }
        });
    }

    private double tagWidth(PlacedRow row) {
        return content.card()
                .rows()
                .get(row.row())
                .number()
                .map(new NumberTag(style())::width)
                .orElse(0.0);
    }

    private String says(List<PlacedRow> rows) {
        List<String> names = rows.stream()
                .map(row -> content.card().rows().get(row.row()))
                .map(row -> row.number()
                        .map(number ->
                                content.phrases().say("stack.block", Map.of("block", row.name(), "step", number)))
                        .orElse(row.name()))
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
        CardRow row = content.card().rows().get(placed.row());
        Rectangle2D box = placed.box();
        rule(
                g,
                box.getX() + content.columns().stack() + content.columns().leads(),
                box.getMinY(),
                box.getWidth() - content.columns().stack() - content.columns().leads());
        String name = row.number()
                .map(number -> content.phrases().say("step", Map.of("number", number, "name", row.name())))
                .orElse(row.name());
        RowFace face = content.faces().get(placed.row());
        double y = box.getCenterY() - face.height() / 2;
        double left = box.getX() + content.columns().wordsLeft();
        Structured.as(g, Role.STEP, () -> {
            Structured.spell(g, name);
            row.number()
                    .ifPresent(number -> new NumberTag(style())
                            .paint(g, number, box.getX() + content.columns().tagRight(), box.getCenterY()));
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
        double height = Math.min(box.getHeight() - 2 * CardContent.PADDING, width * 0.8);
        Rectangle2D place = new Rectangle2D.Double(
                box.getX() + content.columns().pictureLeft(), box.getCenterY() - height / 2, width, height);
        Structured.figure(
                g,
                row.pictureSays(),
                place,
                () -> new StepPainter(g, style().palette(), style().small())
                        .paint(place, content.plan(), end(), row.block()));
    }
}
