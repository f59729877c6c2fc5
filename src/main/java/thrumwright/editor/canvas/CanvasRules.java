package thrumwright.editor.canvas;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.UIManager;
import thrumwright.drawing.PiecePicture;
import thrumwright.drawing.Spread;
import thrumwright.drawing.View;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.look.Ground;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
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

    /** From a note at the left of the picture to its bracket and on to the picture, pixels. */
    private static final int BESIDE_NOTE = 24;

    private static final int BESIDE_NAME = 6;

    /** Warp to spare that is worth a line of its own, mm. */
    private static final double SPARE = 0.05;

    private static final double LINE = 1.4;

    /** From one dash to the next. */
    private static final double DASH = 4;

    private final Graphics2D g;
    private final PieceCanvas canvas;
    private final Plan plan;
    private final PiecePicture picture;
    private final View view;
    private final List<Name> names = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    CanvasRules(Graphics2D g, PieceCanvas canvas) {
        this.g = g;
        this.canvas = canvas;
        this.picture = canvas.picture();
        this.plan = picture.plan();
        this.view = canvas.map().view();
        g.setFont(font());
    }

    private static Font font() {
        Font label = UIManager.getFont("Label.font");
        return label.deriveFont(label.getSize2D() - 1.5f);
    }

    /** Room for the names of lines between the piece and the rule, pixels. */
    static int namesWidth(PieceCanvas canvas) {
        FontMetrics metrics = canvas.getFontMetrics(font());
        Plan plan = canvas.picture().plan();
        int widest = 0;
        for (Map.Entry<String, Double> line : heights(plan).entrySet()) {
            widest = Math.max(widest, metrics.stringWidth(named(canvas, line.getKey(), line.getValue())));
        }
        return widest + 2 * BESIDE_NAME;
    }

    /** Room for the notes at the left, pixels; the same whether there are any, so that the picture keeps its place. */
    static int notesWidth(PieceCanvas canvas) {
        FontMetrics metrics = canvas.getFontMetrics(font());
        Plan plan = canvas.picture().plan();
        int widest = metrics.stringWidth(canvas.texts().say("canvas.comes-out"));
        for (Place place : Place.values()) {
            widest = Math.max(
                    widest,
                    plan.end(place)
                            .hem()
                            .map(hem -> metrics.stringWidth(depth(canvas, hem)))
                            .orElse(0));
        }
        return widest + BESIDE_NOTE;
    }

    private static String depth(PieceCanvas canvas, Hem hem) {
        Shown shown = canvas.picture().plan().piece().shown();
        return canvas.texts().say("canvas.hem", Map.of("depth", shown.height(hem.depth())));
    }

    /** Heights of the lines above the lower bar, by the keys of their names. */
    private static Map<String, Double> heights(Plan plan) {
        Map<String, Double> heights = new LinkedHashMap<>();
        heights.put("canvas.line.start", plan.budget().startLine());
        heights.put("canvas.line.top", plan.budget().designEnds());
        if (plan.budget().left() > SPARE) {
            heights.put("canvas.line.stop", plan.budget().stopLine());
        }
        return heights;
    }

    private static String named(PieceCanvas canvas, String key, double height) {
        Shown shown = canvas.picture().plan().piece().shown();
        return canvas.texts().say(key, Map.of("height", shown.height(height)));
    }

    void paint(Rectangle seen) {
        double left = seen.getMaxX() - WIDTH;
        ground(left, seen);
        for (Place place : List.of(Place.START, Place.TOP)) {
            rule(left, place, seen);
            hem(place);
            comesOut(place);
        }
        notes(seen);
        Map<String, Double> heights = heights(plan);
        line(left, "canvas.line.start", view.y(plan.start().height()), heights);
        line(left, "canvas.line.top", view.y(picture.base(Place.TOP)), heights);
        stop(left, heights);
        names(left);
        selected(left);
    }

    private void ground(double left, Rectangle seen) {
        Ground.fill(
                g,
                new Rectangle2D.Double(left, seen.y, WIDTH, seen.height),
                canvas.palette().paper());
        g.setColor(canvas.palette().faint());
        Hair.upright(g, left, seen.y, seen.getMaxY(), 1);
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
            Hair.level(g, left, left + (numbered ? 9 : 5), y, 1);
            if (numbered) {
                g.setColor(canvas.palette().ink());
                g.drawString(tick.number(), (float) left + 13, (float) (y + metrics.getAscent() / 2.0 - 1));
            }
        }
    }

    /** A line from the cloth to the rule, with its name above it. */
    private void line(double left, String key, double y, Map<String, Double> heights) {
        double from = Math.min(view.x(picture.span()), left - 30);
        g.setColor(canvas.palette().accent());
        Hair.level(g, from, left + 9, y, LINE);
        names.add(new Name(named(canvas, key, heights.get(key)), y));
    }

    /** Where the design must have ended at the latest, if there is warp to spare: further up on the top's rule. */
    private void stop(double left, Map<String, Double> heights) {
        String key = "canvas.line.stop";
        if (heights.containsKey(key)) {
            double y = view.y(picture.base(Place.TOP) + plan.budget().left());
            g.setColor(canvas.palette().accent());
            for (double x = left - 26; x < left + 9; x += 10) {
                Hair.level(g, x, Math.min(x + 6, left + 9), y, LINE);
            }
            names.add(new Name(named(canvas, key, heights.get(key)), y));
        }
    }

    /** A line's name: what it says, and where the line is. */
    private record Name(String text, double y) {}

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
            String text = names.get(i).text();
            double x = left - metrics.stringWidth(text) - BESIDE_NAME;
            double base = places[i] - metrics.getDescent() - 2;
            paper(x - 3, base - metrics.getAscent(), metrics.stringWidth(text) + 6, metrics.getHeight());
            g.setColor(canvas.palette().accent());
            g.drawString(text, (float) x, (float) base);
        }
    }

    private void paper(double x, double y, double width, double height) {
        Color paper = canvas.palette().paper();
        Color thin = new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 225);
        Ground.fill(g, new Rectangle2D.Double(x, y, width, height), thin);
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
        notes.add(new Note(depth(canvas, hem), Math.min(fold, edge), Math.max(fold, edge), false));
    }

    /** What comes out again is paler and framed; here it is said in words. */
    private void comesOut(Place place) {
        View own = view.raised(picture.base(place));
        List<BlockPlan> blocks = plan.end(place).blocks();
        for (int i = 0; i < blocks.size(); i++) {
            int first = i;
            while (i < blocks.size() && blocks.get(i).comesOut()) {
                i++;
            }
            if (i > first) {
                double top = own.y(blocks.get(i - 1).top());
                double bottom = own.y(blocks.get(first).bottom());
                notes.add(new Note(canvas.texts().say("canvas.comes-out"), top, bottom, true));
            }
        }
    }

    /**
     * What a part of an end is, beside a bracket along it.
     *
     * @param broken whether the bracket is broken, since the part comes out again
     */
    private record Note(String text, double top, double bottom, boolean broken) {
        double middle() {
            return (top + bottom) / 2;
        }
    }

    /** Left of the picture, apart from each other. */
    private void notes(Rectangle seen) {
        notes.sort(Comparator.comparingDouble(Note::middle));
        FontMetrics metrics = g.getFontMetrics();
        double[] places = Spread.apart(
                notes.stream().mapToDouble(Note::middle).toArray(),
                metrics.getHeight(),
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY);
        // where the picture is larger than the window, over its edge
        double x = Math.max(view.x(-picture.margin()) - 8, seen.x + notesWidth(canvas) - 8);
        for (int i = 0; i < places.length; i++) {
            Note note = notes.get(i);
            double width = metrics.stringWidth(note.text());
            double base = places[i] + metrics.getAscent() / 2.0 - 1;
            paper(x - 10 - width, base - metrics.getAscent(), width + 6, metrics.getHeight());
            g.setColor(canvas.palette().ink());
            bracket(note, x, seen);
            g.drawString(note.text(), (float) (x - 7 - width), (float) base);
        }
    }

    private void bracket(Note note, double x, Rectangle seen) {
        if (note.broken()) {
            double first = note.top() + DASH * Math.floor(Math.max(0, seen.y - note.top()) / DASH);
            for (double y = first; y < Math.min(note.bottom(), seen.getMaxY()); y += DASH) {
                Hair.upright(g, x, y, Math.min(y + DASH / 2, note.bottom()), LINE);
            }
        } else {
            Hair.upright(g, x, note.top(), note.bottom(), LINE);
        }
        Hair.level(g, x - 4, x + 4, note.top(), LINE);
        Hair.level(g, x - 4, x + 4, note.bottom(), LINE);
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
