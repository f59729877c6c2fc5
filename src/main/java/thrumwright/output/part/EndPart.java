package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import thrumwright.drawing.Palette;
import thrumwright.drawing.Spread;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePainter;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.output.page.Part;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;

/** One end with the numbers of its steps at the right, each led to its block. */
public record EndPart(
        PiecePicture picture, Place place, Map<String, Integer> numbers, Type type, Palette palette, double most)
        implements Part {
    /** Bare warp beyond the end, mm, at least; more where tails hang lower. */
    private static final double BARE = 4;

    /** Room for the lines from the blocks to their numbers. */
    private static final double LEADS = 36;

    private static final double CIRCLE = 20;
    /** Of so many numbers that one column can't hold them. */
    private static final double SMALL_CIRCLE = 15;

    private static final double APART = 2;

    private EndPlan end() {
        return picture.plan().end(place);
    }

    private double bare() {
        double least = Math.max(BARE, picture.loops(place) + 1);
        return place == Place.START ? Math.max(least, picture.hanging(place) + 1) : least;
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

    /** What the numbers may take up, down the page. */
    private double tallest() {
        return 2 * most;
    }

    private double circle() {
        return numbers.size() * (CIRCLE + APART) <= tallest() ? CIRCLE : SMALL_CIRCLE;
    }

    private int columns() {
        return (int) Math.max(1, Math.ceil(numbers.size() * (circle() + APART) / tallest()));
    }

    /** From one number to the next, down the page; those of one column stand clear of each other. */
    private double pitch() {
        return (circle() + APART) / columns();
    }

    /** Room for lines and numbers beside the cloth. */
    private double beside() {
        return LEADS + columns() * (circle() + APART);
    }

    private double scale(double width) {
        double byWidth = (width - beside()) / (picture.span() + 2 * picture.margin());
        return Math.min(byWidth, most / clothHeight());
    }

    @Override
    public double height(double width) {
        return Math.max(scale(width) * clothHeight(), numbers.size() * pitch() + circle()) + 16;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double scale = scale(width);
        double inner = height(width) - 16;
        double lower = (inner - scale * clothHeight()) / 2;
        double left = x + (width - beside() - scale * picture.span()) / 2;
        View view = new View(scale, left, y + 8 + inner - lower - scale * below());
        new PiecePainter(g, palette, true).end(view, picture, place, bare());
        numbers(g, view, x + width - columns() * (circle() + APART), y + 8, y + 8 + inner);
    }

    private record NumberLabel(int number, double wanted) {}

    private void numbers(Graphics2D g, View view, double x, double top, double bottom) {
        List<NumberLabel> labels = new ArrayList<>();
        for (BlockPlan block : end().blocks()) {
            Integer number = numbers.get(block.block().id());
            if (number != null) {
                labels.add(new NumberLabel(number, view.y(block.bottom() + block.height() / 2)));
            }
        }
        labels.sort(Comparator.comparingDouble(NumberLabel::wanted));
        double[] at = Spread.apart(
                labels.stream().mapToDouble(NumberLabel::wanted).toArray(),
                pitch(),
                top + circle() / 2,
                bottom - circle() / 2);
        double edge = view.x(picture.span()) + view.length(Math.min(picture.margin(), 3 * spacing()));
        for (int i = 0; i < at.length; i++) {
            lead(g, edge, labels.get(i).wanted(), x, column(x, i), at[i]);
        }
        for (int i = 0; i < at.length; i++) {
            number(g, labels.get(i).number(), column(x, i), at[i]);
        }
    }

    /** Where a number begins: neighbours stand in different columns, if there are several. */
    private double column(double x, int label) {
        return x + label % columns() * (circle() + APART);
    }

    private double spacing() {
        return picture.plan().piece().warp().spacing();
    }

    private void lead(Graphics2D g, double edge, double from, double x, double to, double at) {
        Path2D lead = new Path2D.Double();
        lead.moveTo(edge, from);
        lead.lineTo(x - 10, at);
        lead.lineTo(to, at);
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(0.7f));
        g.draw(lead);
    }

    private void outlined(Graphics2D g, Ellipse2D circle) {
        g.setColor(palette.paper());
        g.fill(circle);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(1));
        g.draw(circle);
    }

    private void number(Graphics2D g, int number, double x, double at) {
        double size = circle();
        Ellipse2D circle = new Ellipse2D.Double(x, at - size / 2, size, size);
        outlined(g, circle);
        String text = Integer.toString(number);
        Font font = size == CIRCLE ? type.strong() : type.strong().deriveFont((float) (size * 0.55));
        double wide = TextPart.width(text, font);
        g.setFont(font);
        g.drawString(text, (float) (x + (size - wide) / 2), (float) (at + font.getSize2D() * 0.34));
    }
}
