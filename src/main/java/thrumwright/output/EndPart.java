package thrumwright.output;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import thrumwright.drawing.Palette;
import thrumwright.drawing.PiecePainter;
import thrumwright.drawing.PiecePicture;
import thrumwright.drawing.Spread;
import thrumwright.drawing.View;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;

/** One end with the numbers of its steps at the right, each led to its block. */
record EndPart(PiecePicture picture, Place place, Map<String, Integer> numbers, Type type, Palette palette, double most)
        implements Part {
    /** Bare warp beyond the end, mm, at least; more where tails hang lower. */
    private static final double BARE = 4;

    private static final double NUMBERS = 58;
    private static final double CIRCLE = 20;

    private EndPlan end() {
        return picture.plan().end(place);
    }

    private double bare() {
        return place == Place.START ? Math.max(BARE, picture.hanging(place) + 1) : BARE;
    }

    private double below() {
        return place == Place.START
                ? bare()
                : Math.max(PiecePainter.stripeHeight(picture, place), picture.hanging(place) + 1);
    }

    private double above() {
        return place == Place.START ? PiecePainter.stripeHeight(picture, place) : bare();
    }

    private double clothHeight() {
        return below() + end().height() + above();
    }

    private double scale(double width) {
        double byWidth = (width - NUMBERS) / (picture.span() + 2 * picture.margin());
        return Math.min(byWidth, most / clothHeight());
    }

    @Override
    public double height(double width) {
        return Math.max(scale(width) * clothHeight(), numbers.size() * (CIRCLE + 2)) + 16;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double scale = scale(width);
        double inner = height(width) - 16;
        double lower = (inner - scale * clothHeight()) / 2;
        double left = x + (width - NUMBERS - scale * picture.span()) / 2;
        View view = new View(scale, left, y + 8 + inner - lower - scale * below());
        new PiecePainter(g, palette, true).end(view, picture, place, bare());
        numbers(g, view, x + width - CIRCLE - 2, y + 8, y + 8 + inner);
    }

    private record Label(int number, double wanted) {}

    private void numbers(Graphics2D g, View view, double x, double top, double bottom) {
        List<Label> labels = new ArrayList<>();
        for (BlockPlan block : end().blocks()) {
            Integer number = numbers.get(block.block().id());
            if (number != null) {
                labels.add(new Label(number, view.y(block.bottom() + block.height() / 2)));
            }
        }
        labels.sort(Comparator.comparingDouble(Label::wanted));
        double[] at = Spread.apart(
                labels.stream().mapToDouble(Label::wanted).toArray(),
                CIRCLE + 2,
                top + CIRCLE / 2,
                bottom - CIRCLE / 2);
        double edge = view.x(picture.span()) + view.length(Math.min(picture.margin(), 3 * spacing()));
        for (int i = 0; i < at.length; i++) {
            label(g, labels.get(i), edge, x, at[i]);
        }
    }

    private double spacing() {
        return picture.plan().piece().warp().spacing();
    }

    private void label(Graphics2D g, Label label, double edge, double x, double at) {
        Path2D lead = new Path2D.Double();
        lead.moveTo(edge, label.wanted());
        lead.lineTo(x - 10, at);
        lead.lineTo(x, at);
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(0.7f));
        g.draw(lead);
        Ellipse2D circle = new Ellipse2D.Double(x, at - CIRCLE / 2, CIRCLE, CIRCLE);
        g.setColor(palette.paper());
        g.fill(circle);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(1));
        g.draw(circle);
        String text = Integer.toString(label.number());
        double wide = TextPart.width(text, type.strong());
        g.setFont(type.strong());
        g.drawString(text, (float) (x + (CIRCLE - wide) / 2), (float)
                (at + type.strong().getSize2D() * 0.34));
    }
}
