package thrumwright.editor.canvas.painted;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.drawing.Dimension;
import thrumwright.drawing.Spread;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.look.Ground;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;

/**
 * Measures along the warp, left of the picture: how high an end is and how deep its hem, the warp kept free below the start and for the hands
 * above the top, and what comes out later. Where the picture goes on beyond the window, they have a strip of their own at
 * its edge.
 */
public final class SideNotes {
    /** From the edge of the window to a note, and from a measure to the picture, pixels. */
    private static final int EDGE = 4;

    private static final int BESIDE = 6;

    /** From a note to its measure. */
    private static final int GAP = 7;

    /** From the line of a whole end to those of its parts, pixels. */
    private static final int PARTS = 8;

    /** From one dash to the next. */
    private static final double DASH = 4;

    private final Showing showing;
    private final Plan plan;
    private final Rectangle seen;
    private final FontMetrics metrics;
    private final List<Note> notes = new ArrayList<>();

    /** What a note measures. */
    public enum Measure {
        HEM,
        HANDS,
        BELOW,
        COMES_OUT,
        /** A whole end. */
        STACK;

        /** Whether another can be typed over it. */
        boolean typed() {
            return this != COMES_OUT && this != STACK;
        }
    }

    /** A note beside what it measures, from one height on the canvas to another. */
    private record Note(Measure measure, Place place, String text, double top, double bottom) {
        /** The middle of what can be seen of it. */
        double middle(Rectangle seen) {
            return (Math.max(top, seen.getMinY()) + Math.min(bottom, seen.getMaxY())) / 2;
        }

        boolean meets(Rectangle seen) {
            return bottom >= seen.getMinY() && top <= seen.getMaxY();
        }
    }

    /** A figure that can be typed over, and where it stands on the canvas. */
    public record Figure(Measure measure, Place place, Rectangle box) {}

    SideNotes(Showing showing, FontMetrics metrics) {
        this.showing = showing;
        this.plan = showing.plan();
        this.seen = showing.seen();
        this.metrics = metrics;
        for (Place place : Place.values()) {
            hem(place);
            comesOut(place);
            stack(place);
        }
        free();
        notes.removeIf(note -> !note.meets(seen));
        notes.sort(Comparator.comparingDouble(note -> note.middle(seen)));
    }

    /** The figure at a point, if it can be typed over. */
    public static Optional<Figure> at(Showing showing, FontMetrics metrics, Point point) {
        return showing.widths().stream()
                .flatMap(widths -> new SideNotes(showing, metrics).figures(widths.notes()))
                .filter(figure -> figure.box().contains(point))
                .findFirst();
    }

    private Stream<Figure> figures(int width) {
        double[] places = places();
        double right = x(width) - GAP;
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            Note note = notes.get(i);
            int wide = metrics.stringWidth(note.text());
            int high = metrics.getHeight();
            Rectangle box = new Rectangle((int) right - wide, (int) places[i] - high / 2, wide, high);
            figures.add(new Figure(note.measure(), note.place(), box));
        }
        return figures.stream().filter(figure -> figure.measure().typed());
    }

    /** Room for the notes at the left, pixels; the same whether there are any, so that the picture keeps its place. */
    static int width(Plan plan, Texts texts, FontMetrics metrics) {
        double deepest = 0;
        for (Place place : Place.values()) {
            deepest = Math.max(deepest, plan.end(place).hem().map(Hem::depth).orElse(0.0));
        }
        double free = Math.max(plan.budget().workingRoom(), plan.budget().clearance());
        String most = Division.widest(plan.piece().shown(), free);
        int widest = Stream.of(
                        texts.say(
                                "canvas.hem",
                                Map.of("depth", Division.widest(plan.piece().shown(), deepest))),
                        texts.say("canvas.hands", Map.of("room", most)),
                        texts.say("canvas.below", Map.of("room", most)),
                        texts.say("canvas.stack.start", Map.of("height", most)),
                        texts.say("canvas.comes-out"))
                .mapToInt(metrics::stringWidth)
                .max()
                .orElse(0);
        return EDGE + widest + GAP + PARTS + BESIDE;
    }

    /** @param width of the strip, pixels */
    void paint(Graphics2D g, int width) {
        if (showing.map().left() < seen.getMinX() + width - 1) {
            ground(g, width);
        }
        double x = x(width);
        double[] places = places();
        for (int i = 0; i < places.length; i++) {
            Note note = notes.get(i);
            line(g, note, note.measure() == Measure.STACK ? x + PARTS : x);
            g.setColor(showing.palette().ink());
            double base = places[i] + (metrics.getAscent() - metrics.getDescent()) / 2.0;
            g.drawString(note.text(), (float) (x - GAP - metrics.stringWidth(note.text())), (float) base);
        }
    }

    private double x(int width) {
        return Math.max(showing.map().left(), seen.getMinX() + width) - BESIDE - PARTS;
    }

    private double[] places() {
        double half = metrics.getHeight() / 2.0;
        return Spread.apart(
                notes.stream().mapToDouble(note -> note.middle(seen)).toArray(),
                metrics.getHeight(),
                seen.getMinY() + half,
                seen.getMaxY() - half);
    }

    /** So that no note lies on cloth. */
    private void ground(Graphics2D g, int width) {
        Ground.fill(
                g,
                new Rectangle2D.Double(seen.x, seen.y, width, seen.height),
                showing.palette().paper());
        g.setColor(showing.palette().faint());
        Hair.upright(g, seen.getMinX() + width, seen.y, seen.getMaxY(), 1);
    }

    /** The depth of a hem, from its fold to its outer edge. */
    private void hem(Place place) {
        EndPlan end = plan.end(place);
        end.hem().filter(Hem::folds).ifPresent(hem -> {
            String text = say("canvas.hem", "depth", hem.depth());
            add(Measure.HEM, place, text, map().y(place, hem.foldLine()), map().y(place, end.edge()));
        });
    }

    /** How high a whole end is. */
    private void stack(Place place) {
        EndPlan end = plan.end(place);
        if (end.blocks().size() > 1) {
            String key = place == Place.START ? "canvas.stack.start" : "canvas.stack.top";
            String text = say(key, "height", end.height());
            add(Measure.STACK, place, text, map().y(place, 0), map().y(place, end.height()));
        }
    }

    /** Warp that the hands need below the upper bar, and that is kept free above the lower one. */
    private void free() {
        double lower = map().picture().lowerBar();
        if (lower < 0) {
            String text = say("canvas.below", "room", -lower);
            add(Measure.BELOW, Place.START, text, map().height(lower), map().height(0));
        }
        double room = plan.budget().workingRoom();
        if (room > 0) {
            double upper = map().picture().upperBar();
            String text = say("canvas.hands", "room", room);
            add(Measure.HANDS, Place.TOP, text, map().height(upper), map().height(upper - room));
        }
    }

    private String say(String key, String name, double mm) {
        return showing.texts().say(key, Map.of(name, plan.piece().shown().height(mm)));
    }

    private CanvasMap map() {
        return showing.map();
    }

    /** What comes out again is paler and framed; here it is said in words. */
    private void comesOut(Place place) {
        List<BlockPlan> blocks = plan.end(place).blocks();
        for (int i = 0; i < blocks.size(); i++) {
            int first = i;
            while (i < blocks.size() && blocks.get(i).comesOut()) {
                i++;
            }
            if (i > first) {
                double low = map().y(place, blocks.get(first).bottom());
                double high = map().y(place, blocks.get(i - 1).top());
                add(Measure.COMES_OUT, place, showing.texts().say("canvas.comes-out"), low, high);
            }
        }
    }

    /** @param one a height on the canvas, and so the other */
    private void add(Measure measure, Place place, String text, double one, double other) {
        notes.add(new Note(measure, place, text, Math.min(one, other), Math.max(one, other)));
    }

    private void line(Graphics2D g, Note note, double x) {
        g.setColor(showing.palette().ink());
        if (note.measure() != Measure.COMES_OUT) {
            LongLines.upright(g, x, note.top(), note.bottom(), Dimension.THICK);
            new Dimension(g, showing.palette().ink(), null).ends(x, note.top(), note.bottom());
            return;
        }
        double from = Math.max(note.top(), seen.getMinY());
        double to = Math.min(note.bottom(), seen.getMaxY());
        double first = note.top() + DASH * Math.floor((from - note.top()) / DASH);
        for (double y = first; y < to; y += DASH) {
            Hair.upright(g, x, y, Math.min(y + DASH / 2, note.bottom()), Hair.LINE);
        }
        Hair.level(g, x - 4, x + 4, note.top(), Hair.LINE);
        Hair.level(g, x - 4, x + 4, note.bottom(), Hair.LINE);
    }
}
