package thrumwright.editor.canvas;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import javax.swing.UIManager;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.look.Ground;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/**
 * Heights above the lower bar at the right edge of the window, with the start line and the stop line and beyond them
 * their names; at the left what parts of each end are. Never printed.
 */
final class CanvasRules {
    /** How thick lines and brackets are, pixels. */
    static final double LINE = 1.4;

    /** From the edge of a rule to its numbers, pixels. */
    private static final int NUMBERS = 13;

    /** How far a numbered stroke reaches. */
    private static final int STROKE = 9;

    /** Warp to spare that is worth a line of its own, mm. */
    private static final double SPARE = 0.05;

    private final Graphics2D g;
    private final PieceCanvas canvas;
    private final Plan plan;
    private final PiecePicture picture;
    private final View view;
    private final LineNames names = new LineNames();

    CanvasRules(Graphics2D g, PieceCanvas canvas) {
        this.g = g;
        this.canvas = canvas;
        this.picture = canvas.picture();
        this.plan = picture.plan();
        this.view = canvas.map().view();
        g.setFont(labelFont());
    }

    private static Font labelFont() {
        Font label = UIManager.getFont("Label.font");
        return label.deriveFont(label.getSize2D() - 1.5f);
    }

    /**
     * How much room they take, pixels; measured once for each plan and font.
     *
     * @param notes of what stands at the left
     * @param rule of the rule with the names beyond it
     */
    record Widths(Plan plan, Font font, int notes, int rule) {
        static Widths of(PieceCanvas canvas) {
            Font font = labelFont();
            FontMetrics metrics = canvas.getFontMetrics(font);
            return new Widths(
                    canvas.picture().plan(),
                    font,
                    SideNotes.width(canvas, metrics),
                    numbersWidth(canvas, metrics) + LineNames.width(metrics, canvas.texts(), highest(canvas)));
        }

        boolean isOf(PieceCanvas canvas) {
            return plan == canvas.picture().plan() && font.equals(labelFont());
        }
    }

    private static int numbersWidth(PieceCanvas canvas, FontMetrics metrics) {
        return NUMBERS + metrics.stringWidth(Ticks.number(highest(canvas)));
    }

    private static String highest(PieceCanvas canvas) {
        Piece piece = canvas.picture().plan().piece();
        return Ticks.widest(piece.shown(), piece.loom().open().mm());
    }

    void paint(Rectangle seen) {
        double left = seen.getMaxX() - canvas.widths().rule();
        ground(left, seen);
        name(LineNames.START, plan.budget().startLine(), startLine(), seen);
        name(LineNames.TOP, plan.budget().designEnds(), topLine(), seen);
        if (spare()) {
            name(LineNames.STOP, plan.budget().stopLine(), stopLine(), seen);
        }
        rule(left, Place.START, seen);
        rule(left, Place.TOP, seen);
        new SideNotes(g, canvas, seen).paint(canvas.widths().notes());
        lines(left, seen);
        selected(left);
    }

    private void ground(double left, Rectangle seen) {
        Ground.fill(
                g,
                new Rectangle2D.Double(left, seen.y, seen.getMaxX() - left, seen.height),
                canvas.palette().paper());
        g.setColor(canvas.palette().faint());
        Hair.upright(g, left, seen.y, seen.getMaxY(), 1);
    }

    private double startLine() {
        return view.y(plan.start().height());
    }

    private double topLine() {
        return view.y(picture.base(Place.TOP));
    }

    private boolean spare() {
        return plan.budget().left() > SPARE;
    }

    /** Where the design must have ended at the latest: further up on the top's rule. */
    private double stopLine() {
        return view.y(picture.base(Place.TOP) + plan.budget().left());
    }

    private void name(String key, double height, double y, Rectangle seen) {
        names.add(canvas.texts().say(key), plan.piece().shown().height(height), y, seen);
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
            Hair.level(g, left, left + (numbered ? STROKE : STROKE - 4), y, 1);
            if (numbered && !names.crosses(y, metrics)) {
                g.setColor(canvas.palette().ink());
                g.drawString(tick.number(), (float) left + NUMBERS, (float) (y + metrics.getAscent() / 2.0 - 1));
            }
        }
    }

    /** From the cloth to the rule, the stop line in dashes, and on to their names. */
    private void lines(double left, Rectangle seen) {
        g.setColor(canvas.palette().accent());
        double from = Math.min(view.x(picture.span()), left - 30);
        for (double y : new double[] {startLine(), topLine()}) {
            Hair.level(g, from, left + STROKE, y, LINE);
        }
        if (spare()) {
            for (double x = left - 26; x < left + STROKE; x += 10) {
                Hair.level(g, x, Math.min(x + 6, left + STROKE), stopLine(), LINE);
            }
        }
        names.paint(g, left + STROKE, left + numbersWidth(canvas, g.getFontMetrics()), seen);
    }

    /** Where the selected block begins and ends, on the rule. */
    private void selected(double left) {
        for (Spot spot : canvas.map().spots()) {
            if (canvas.session().selection().has(spot.place(), spot.id())) {
                double height = Math.max(2, spot.bottom() - spot.top());
                Ground.fill(g, new Rectangle2D.Double(left - 2, spot.top(), 5, height), canvas.accent());
            }
        }
    }
}
