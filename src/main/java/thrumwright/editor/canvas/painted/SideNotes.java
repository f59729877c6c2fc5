package thrumwright.editor.canvas.painted;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import thrumwright.drawing.Spread;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.look.Ground;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;

/**
 * What parts of an end are, each beside a bracket along it, left of the picture: the depth of a hem, what comes out later.
 * Where the picture goes on beyond the window, they have a strip of their own at its edge.
 */
final class SideNotes {
    /** From a bracket to the picture, and from the edge of the window to a note, pixels. */
    private static final int BESIDE = 8;

    /** From a note to its bracket. */
    private static final int GAP = 7;

    /** From one dash to the next. */
    private static final double DASH = 4;

    private final Graphics2D g;
    private final Showing showing;
    private final Plan plan;
    private final Rectangle seen;
    private final List<Note> notes = new ArrayList<>();

    /**
     * @param broken whether the bracket is broken, since the part comes out again
     */
    private record Note(String text, double top, double bottom, boolean broken) {
        /** The middle of what can be seen of it. */
        double middle(Rectangle seen) {
            return (Math.max(top, seen.getMinY()) + Math.min(bottom, seen.getMaxY())) / 2;
        }

        boolean meets(Rectangle seen) {
            return bottom >= seen.getMinY() && top <= seen.getMaxY();
        }
    }

    SideNotes(Graphics2D g, Showing showing) {
        this.g = g;
        this.showing = showing;
        this.plan = showing.plan();
        this.seen = showing.seen();
    }

    /** Room for the notes at the left, pixels; the same whether there are any, so that the picture keeps its place. */
    static int width(Plan plan, Texts texts, FontMetrics metrics) {
        double deepest = 0;
        for (Place place : Place.values()) {
            deepest = Math.max(deepest, plan.end(place).hem().map(Hem::depth).orElse(0.0));
        }
        String depth = Division.widest(plan.piece().shown(), deepest);
        int hem = metrics.stringWidth(texts.say("canvas.hem", Map.of("depth", depth)));
        int out = metrics.stringWidth(texts.say("canvas.comes-out"));
        return BESIDE + Math.max(hem, out) + GAP + BESIDE;
    }

    /** @param width of the strip, pixels */
    void paint(int width) {
        for (Place place : Place.values()) {
            hem(place);
            comesOut(place);
        }
        double beside = showing.map().x(-showing.picture().margin());
        double strip = seen.getMinX() + width;
        if (beside < strip) {
            ground(width);
        }
        double x = Math.max(beside, strip) - BESIDE;
        notes.removeIf(note -> !note.meets(seen));
        notes.sort(Comparator.comparingDouble(note -> note.middle(seen)));
        FontMetrics metrics = g.getFontMetrics();
        double half = metrics.getHeight() / 2.0;
        double[] places = Spread.apart(
                notes.stream().mapToDouble(note -> note.middle(seen)).toArray(),
                metrics.getHeight(),
                seen.getMinY() + half,
                seen.getMaxY() - half);
        g.setColor(showing.palette().ink());
        for (int i = 0; i < places.length; i++) {
            Note note = notes.get(i);
            bracket(note, x);
            double base = places[i] + (metrics.getAscent() - metrics.getDescent()) / 2.0;
            g.drawString(note.text(), (float) (x - GAP - metrics.stringWidth(note.text())), (float) base);
        }
    }

    /** So that no note lies on cloth. */
    private void ground(int width) {
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
            Shown shown = plan.piece().shown();
            String text = showing.texts().say("canvas.hem", Map.of("depth", shown.height(hem.depth())));
            add(place, text, hem.foldLine(), end.edge(), false);
        });
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
                String text = showing.texts().say("canvas.comes-out");
                add(place, text, blocks.get(first).bottom(), blocks.get(i - 1).top(), true);
            }
        }
    }

    /** @param one a height of the end, mm, and so the other */
    private void add(Place place, String text, double one, double other, boolean broken) {
        CanvasMap map = showing.map();
        notes.add(new Note(text, map.y(place, Math.max(one, other)), map.y(place, Math.min(one, other)), broken));
    }

    private void bracket(Note note, double x) {
        double from = Math.max(note.top(), seen.getMinY());
        double to = Math.min(note.bottom(), seen.getMaxY());
        if (note.broken()) {
            double first = note.top() + DASH * Math.floor((from - note.top()) / DASH);
            for (double y = first; y < to; y += DASH) {
                Hair.upright(g, x, y, Math.min(y + DASH / 2, note.bottom()), Hair.LINE);
            }
        } else {
            Hair.upright(g, x, from, to, Hair.LINE);
        }
        Hair.level(g, x - 4, x + 4, note.top(), Hair.LINE);
        Hair.level(g, x - 4, x + 4, note.bottom(), Hair.LINE);
    }
}
