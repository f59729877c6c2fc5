package thrumwright.editor.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import javax.swing.UIManager;
import thrumwright.drawing.PiecePicture;
import thrumwright.drawing.Spread;
import thrumwright.drawing.View;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;

/**
 * Heights above the lower bar at the right edge of the window, with the start line and the stop line; at the left the
 * depth of each hem. Never printed.
 */
final class CanvasRules {
    /** How wide a rule is, pixels. */
    static final int WIDTH = 62;

    /** Room for the hem's depth at the left, pixels. */
    static final int LEFT = 92;

    private final Graphics2D g;
    private final PieceCanvas canvas;
    private final Plan plan;
    private final PiecePicture picture;
    private final View view;
    private final List<Name> names = new ArrayList<>();

    CanvasRules(Graphics2D g, PieceCanvas canvas) {
        this.g = g;
        this.canvas = canvas;
        this.picture = canvas.picture();
        this.plan = picture.plan();
        this.view = canvas.map().view();
        g.setFont(UIManager.getFont("Label.font")
                .deriveFont(UIManager.getFont("Label.font").getSize2D() - 1.5f));
    }

    void paint(Rectangle seen) {
        double left = seen.getMaxX() - WIDTH;
        ground(left, seen);
        for (Place place : List.of(Place.START, Place.TOP)) {
            rule(left, place, seen);
            hem(place);
        }
        line(
                left,
                "canvas.line.start",
                view.y(plan.start().height()),
                plan.budget().startLine());
        line(
                left,
                "canvas.line.top",
                view.y(picture.base(Place.TOP)),
                plan.budget().designEnds());
        stop(left);
        names(left);
        selected(left);
    }

    private void ground(double left, Rectangle seen) {
        g.setColor(canvas.palette().paper());
        g.fill(new Rectangle2D.Double(left, seen.y, WIDTH, seen.height));
        g.setColor(canvas.palette().faint());
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(left, seen.y, left, seen.getMaxY()));
    }

    /** The start's rule goes down to the lower bar and the top's up to the upper one. */
    private void rule(double left, Place place, Rectangle seen) {
        EndPlan end = plan.end(place);
        FontMetrics metrics = g.getFontMetrics();
        Ticks ticks =
                Ticks.of(view.scale(), metrics.getHeight() + 4, plan.piece().shown());
        double zero = view.y(picture.base(place) - end.onLoom());
        double lowest = place == Place.START ? 0 : end.onLoom();
        double highest = place == Place.START
                ? end.onLoom() + end.height()
                : plan.piece().loom().open().mm();
        double seenLow = (zero - seen.getMaxY()) / view.scale();
        double seenHigh = (zero - seen.getMinY()) / view.scale();
        for (Ticks.Tick tick : ticks.between(Math.max(lowest, seenLow), Math.min(highest, seenHigh))) {
            double y = zero - tick.at() * view.scale();
            boolean numbered = !tick.number().isEmpty();
            g.setColor(canvas.palette().faint());
            g.draw(new Line2D.Double(left, y, left + (numbered ? 9 : 5), y));
            if (numbered) {
                g.setColor(canvas.palette().ink());
                g.drawString(tick.number(), (float) left + 13, (float) (y + metrics.getAscent() / 2.0 - 1));
            }
        }
    }

    /** A line from the cloth to the rule, with its name beside it. */
    private void line(double left, String key, double y, double height) {
        double from = Math.min(view.x(picture.span()), left - 30);
        g.setColor(canvas.palette().accent());
        g.setStroke(new BasicStroke(1.4f));
        g.draw(new Line2D.Double(from, y, left + 9, y));
        names.add(new Name(key, height, y));
    }

    /** Where the design must have ended at the latest, if there is warp to spare: further up on the top's rule. */
    private void stop(double left) {
        double y = view.y(picture.base(Place.TOP) + plan.budget().left());
        g.setColor(canvas.palette().accent());
        g.setStroke(new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0));
        if (plan.budget().left() > 0.05) {
            g.draw(new Line2D.Double(left - 26, y, left + 9, y));
            names.add(new Name("canvas.line.stop", plan.budget().stopLine(), y));
        }
    }

    /** A line's name: what it says, and where the line is. */
    private record Name(String key, double height, double y) {}

    /** Each above its line, but apart from each other; the highest line first. */
    private void names(double left) {
        names.sort(Comparator.comparingDouble(Name::y));
        FontMetrics metrics = g.getFontMetrics();
        double[] places = Spread.apart(
                names.stream().mapToDouble(Name::y).toArray(),
                metrics.getHeight(),
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY);
        for (int i = 0; i < places.length; i++) {
            Name name = names.get(i);
            String text = canvas.texts()
                    .say(name.key(), Map.of("height", plan.piece().shown().height(name.height())));
            double x = left - metrics.stringWidth(text) - 6;
            double base = places[i] - metrics.getDescent() - 2;
            paper(x - 3, base - metrics.getAscent(), metrics.stringWidth(text) + 6, metrics.getHeight());
            g.setColor(canvas.palette().accent());
            g.drawString(text, (float) x, (float) base);
        }
    }

    private void paper(double x, double y, double width, double height) {
        Color paper = canvas.palette().paper();
        g.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 225));
        g.fill(new Rectangle2D.Double(x, y, width, height));
    }

    /** The depth of a hem, from its fold to its outer edge, left of the picture. */
    private void hem(Place place) {
        EndPlan end = plan.end(place);
        if (end.hem().filter(Hem::folds).isEmpty()) {
            return;
        }
        Hem hem = end.hem().get();
        View own = view.raised(picture.base(place));
        double fold = own.y(hem.foldLine());
        double edge = own.y(end.edge());
        double x = view.x(-picture.margin()) - 8;
        g.setColor(canvas.palette().ink());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Line2D.Double(x, fold, x, edge));
        for (double y : new double[] {fold, edge}) {
            g.draw(new Line2D.Double(x - 4, y, x + 4, y));
        }
        String depth = canvas.texts()
                .say("canvas.hem", Map.of("depth", plan.piece().shown().height(hem.depth())));
        FontMetrics metrics = g.getFontMetrics();
        double middle = (fold + edge) / 2 + metrics.getAscent() / 2.0 - 1;
        g.drawString(depth, (float) (x - 7 - metrics.stringWidth(depth)), (float) middle);
    }

    /** Where the selected block begins and ends, on the rule. */
    private void selected(double left) {
        for (Spot spot : canvas.map().spots()) {
            if (canvas.session().selection().has(spot.place(), spot.id())) {
                g.setColor(canvas.accent());
                double height = Math.max(2, spot.bottom() - spot.top());
                g.fill(new Rectangle2D.Double(left - 2, spot.top(), 5, height));
            }
        }
    }
}
