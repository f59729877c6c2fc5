package thrumwright.output.card;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import thrumwright.output.page.Structured;
import thrumwright.plan.BlockPlan;
import thrumwright.sheet.card.CardRow;
import thrumwright.sheet.card.YarnLetters;

/**
 * The stack beside the rows, and the lines that lead from its blocks to theirs.
 *
 * @param rows from the lowest
 */
record CardSide(CardContent content, List<PlacedRow> rows) {
    /** Room below the stack and above it, so that its outline stays clear of the rules. */
    private static final double FREE = 2;

    private Rectangle2D box() {
        Rectangle2D low = rows.get(0).box();
        double top = rows.get(rows.size() - 1).box().getMinY();
        return new Rectangle2D.Double(low.getX(), top, content.columns().stack(), low.getMaxY() - top);
    }

    private CardStack stack() {
        List<BlockPlan> blocks = rows.stream().map(row -> row(row).block()).toList();
        YarnLetters letters = YarnLetters.of(content.plan().piece());
        return CardStack.within(content.end(), blocks, box().getHeight() - 2 * FREE, letters, content.style());
    }

    /** How many times as high as the weaving it is; 0 if there is none. */
    double times() {
        return rows.isEmpty() ? 0 : stack().times();
    }

    void paint(Graphics2D g) {
        if (rows.isEmpty()) {
            return;
        }
        CardStack stack = stack();
        double foot = box().getMaxY() - FREE;
        Structured.figure(g, says(), box(), () -> {
            stack.paint(g, box().getX() + 1, foot, box().getWidth() - 2);
            rows.forEach(row -> lead(g, stack.middle(row(row).block(), foot), row));
        });
    }

    private CardRow row(PlacedRow placed) {
        return content.card().rows().get(placed.row());
    }

    private String says() {
        List<String> names = rows.stream()
                .map(this::row)
                .map(row -> content.phrases().say("stack.block", Map.of("block", row.name(), "step", row.number())))
                .toList();
        return content.phrases().say("stack.says", Map.of("blocks", String.join(", ", names)));
    }

    private void lead(Graphics2D g, double from, PlacedRow row) {
        double left = box().getMaxX();
        double to = row.box().getCenterY();
        double tag = new NumberTag(content.style()).width(row(row).number());
        Path2D lead = new Path2D.Double();
        lead.moveTo(left, from);
        lead.lineTo(left + 4, from);
        lead.lineTo(left + content.columns().leads() - 3, to);
        lead.lineTo(box().getX() + content.columns().tagRight() - tag, to);
        g.setColor(content.style().palette().ink());
        g.setStroke(new BasicStroke(0.9f));
        g.draw(lead);
    }
}
