package thrumwright.editor.canvas.painted;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import thrumwright.editor.canvas.seen.Axis;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.look.Ground;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/**
 * Heights above the lower bar at the right edge of the window, with the start line and the stop line and
 * their names; at the left what parts of each end are. Never printed.
 */
public final class CanvasRules {
    /** How far a numbered stroke reaches, pixels. */
    private static final int STROKE = 9;

    /** Warp to spare that is worth a line of its own, mm. */
    private static final double SPARE = 0.05;

    private final Graphics2D g;
    private final Showing showing;
    private final RuleWidths widths;
    private final Plan plan;
    private final CanvasMap map;
    private final Rectangle seen;
    private final FontMetrics metrics;
    private final List<Double> numbers = new ArrayList<>();
    private final LineNames names;
    /** The edge of the rule. */
    private final double left;

    public CanvasRules(Graphics2D g, Showing showing, RuleWidths widths) {
        g.setFont(widths.font());
        this.g = g;
        this.showing = showing;
        this.widths = widths;
        this.plan = showing.plan();
        this.map = showing.map();
        this.seen = showing.seen();
        this.metrics = g.getFontMetrics();
        this.names = new LineNames(seen, metrics);
        this.left = seen.getMaxX() - widths.rule();
    }

    public void paint() {
        new RowNotes(g, showing).paint();
        g.setFont(widths.font());
        ground();
        names.add(
                startLine(),
                false,
                List.of(say(LineNames.START), height(plan.budget().startLine())));
        names.add(topLine(), true, top());
        rule(Place.START, 0, plan.start().onLoom() + plan.start().height());
        rule(Place.TOP, plan.top().onLoom(), plan.budget().open());
        new SideNotes(showing, metrics).paint(g, widths.notes());
        lines();
        selected();
    }

    private void ground() {
        Rectangle2D strip = new Rectangle2D.Double(left, seen.y, seen.getMaxX() - left, seen.height);
        Ground.fill(g, strip, showing.palette().paper());
        g.setColor(showing.palette().faint());
        Hair.upright(g, left, seen.y, seen.getMaxY(), 1);
    }

    private double startLine() {
        return map.y(Place.START, plan.start().height());
    }

    private double topLine() {
        return map.y(Place.TOP, 0);
    }

    private boolean spare() {
        return plan.budget().left() > SPARE;
    }

    private List<String> top() {
        List<String> words = new ArrayList<>(List.of(
                say(LineNames.TOP), height(plan.above(Place.TOP, plan.budget().designEnds()))));
        if (spare()) {
            words.addAll(LineNames.stop(
                    showing.texts(), height(plan.above(Place.TOP, plan.budget().stopLine()))));
        }
        return words;
    }

    private String say(String key) {
        return showing.texts().say(key);
    }

    private String height(double mm) {
        return plan.piece().shown().height(mm);
    }

    /**
     * The start's rule goes down to the lower bar and the top's up to the upper one.
     *
     * @param lowest and highest above the lower bar, mm
     */
    private void rule(Place place, double lowest, double highest) {
        EndPlan end = plan.end(place);
        Division division =
                Division.of(map.scale(), metrics.getHeight() + 4, plan.piece().shown());
        double from = Math.max(lowest, end.onLoom() + map.above(place, seen.getMaxY()));
        double to = Math.min(highest, end.onLoom() + map.above(place, seen.getMinY()));
        double base = map.picture().base(place) - end.onLoom();
        double told = plan.above(place, 0);
        List<Axis.Span> spans = new ArrayList<>(map.axes().up().spans());
        if (place == Place.TOP) {
            // the bar's height comes before others that would stand too near
            Collections.reverse(spans);
        }
        for (Axis.Span span : spans) {
            double low = Math.max(from, span.from() - base);
            for (Division.Stroke stroke : division.between(low + told, Math.min(to, span.to() - base) + told)) {
                stroke(stroke, map.height(stroke.at() - told + base));
            }
        }
    }

    private void stroke(Division.Stroke stroke, double y) {
        g.setColor(showing.palette().faint());
        Hair.level(g, left, left + (stroke.numbered() ? STROKE : STROKE - 4), y, 1);
        if (stroke.numbered() && !names.covers(y) && free(y)) {
            numbers.add(y);
            g.setColor(showing.palette().ink());
            g.drawString(
                    stroke.number(), (float) left + RuleWidths.NUMBERS, (float) (y + metrics.getAscent() / 2.0 - 1));
        }
    }

    /** Whether no number lies there yet: where much is left out the heights of both sides meet. */
    private boolean free(double y) {
        return numbers.stream().noneMatch(other -> Math.abs(other - y) < metrics.getHeight());
    }

    /** From the cloth to the rule and on to their names. */
    private void lines() {
        g.setColor(showing.palette().accent());
        double from = Math.min(map.x(showing.picture().span()), left - 30);
        Hair.level(g, from, left + STROKE, startLine(), Hair.LINE);
        Hair.level(g, from, left + STROKE, topLine(), Hair.LINE);
        names.paint(g, left + STROKE, left + RuleWidths.NUMBERS, seen.getMaxX());
    }

    /** Where the selected block begins and ends, on the rule. */
    private void selected() {
        for (BlockSpot spot : map.spots()) {
            if (showing.selection().has(spot.place(), spot.id())) {
                Ground.fill(
                        g, new Rectangle2D.Double(left - 2, spot.top(), 5, Math.max(2, spot.high())), showing.accent());
            }
        }
    }
}
