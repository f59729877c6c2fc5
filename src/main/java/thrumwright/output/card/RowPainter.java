package thrumwright.output.card;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import thrumwright.drawing.step.StepPainter;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.sheet.card.CardRow;

/** Paints a row: a rule above it, its number, its drawing and its words. */
record RowPainter(Graphics2D g, CardContent content, PlacedRow placed) {
    /** In narrower drawings measures find no room; the row has them. */
    private static final double WORDED = 110;

    private CardRow row() {
        return content.card().rows().get(placed.row());
    }

    private CardStyle style() {
        return content.style();
    }

    private RowFace face() {
        return content.faces().get(placed.row());
    }

    private Rectangle2D box() {
        return placed.box();
    }

    private double wordsTop() {
        return box().getCenterY() - face().height() / 2;
    }

    private double wordsLeft() {
        return box().getX() + content.columns().wordsLeft();
    }

    void paint() {
        rule();
        heading();
        face().paint(g, wordsLeft(), wordsTop(), style());
        if (CardContent.drawn(row()) && content.columns().picture() > 0) {
            picture(content.columns().picture());
        }
    }

    private void rule() {
        double left =
                box().getX() + content.columns().stack() + content.columns().leads();
        g.setColor(style().palette().faint());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Line2D.Double(left, box().getMinY(), box().getMaxX(), box().getMinY()));
    }

    /** Number and name. */
    private void heading() {
        String says = content.phrases().say("step", Map.of("number", row().number(), "name", row().name()));
        Structured.as(g, Role.STEP, () -> {
            Structured.spell(g, says);
            double right = box().getX() + content.columns().tagRight();
            new NumberTag(style()).paint(g, row().number(), right, box().getCenterY());
            face().paintName(g, wordsLeft(), wordsTop(), style());
        });
    }

    private void picture(double width) {
        double height = Math.min(box().getHeight() - 2 * content.padding(), width * 0.8);
        double left = box().getX() + content.columns().pictureLeft();
        Rectangle2D place = new Rectangle2D.Double(left, box().getCenterY() - height / 2, width, height);
        StepPainter painter = new StepPainter(g, style().palette(), width < WORDED ? null : style().small());
        Structured.figure(
                g,
                row().pictureSays(),
                place,
                () -> painter.paint(place, content.plan(), content.end(), row().block()));
    }
}
