package thrumwright.drawing.yarn;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/**
 * Draws stretches of yarn as round cords: a dark rim, a body, a soft light where they stand out towards the eye and,
 * where they are big enough, their ply.
 */
public final class YarnPen {
    /** From so many device units a yarn is thick enough to show its ply, its soft light, its ridge, and its rim. */
    private static final double PLY_FROM = 7;

    /** So many points of an outline, at most, are round its ends if they aren't curves. */
    private static final int ROUND_ENDS = 8;

    /** How wide a strand of a bundle shows, as a share of the bundle (a model: for the eye). */
    private static final double STRAND = 0.2;

    /** Strands leave the rim free, so that the yarn stays round. */
    private static final double STRAND_REACH = 0.26;

    private static final double BLEND_FROM = 2.5;

    private static final double SOFT_FROM = 6;
    private static final double RIDGE_FROM = 2.2;
    private static final double RIM_FROM = 1.1;
    private static final double FADED_BELOW = 5;

    private final Graphics2D g;
    private final View view;
    private final Tone tone;
    private final int plies;
    private final Face face;
    private final List<Color> strands;
    private final Optional<Rectangle2D> marked;

    /**
     * The shades of one yarn.
     *
     * @param lit whether light falls on its ridge; behind the warp only so much that it is seen to be round
     */
    private record Tone(Color rim, Color body, Color soft, Color ridge, Color ply, boolean lit) {
        static Tone of(Color yarn, boolean lit) {
            boolean dark = Palette.lightness(yarn) < 0.18;
            return new Tone(
                    Palette.mixed(yarn, Color.BLACK, dark ? 0.7 : 0.46),
                    Palette.mixed(yarn, Color.BLACK, 0.06),
                    Palette.mixed(yarn, Color.WHITE, lit ? 0.12 : 0.08),
                    Palette.mixed(yarn, Color.WHITE, dark ? 0.24 : 0.3),
                    Palette.mixed(yarn, Color.BLACK, dark ? 0.34 : 0.2),
                    lit);
        }
    }

    private YarnPen(
            Graphics2D g,
            View view,
            Tone tone,
            int plies,
            Face face,
            List<Color> strands,
            Optional<Rectangle2D> marked) {
        this.g = g;
        this.view = view;
        this.tone = tone;
        this.plies = plies;
        this.face = face;
        this.strands = strands;
        this.marked = marked;
    }

    public YarnPen(Graphics2D g, View view, Color colour, int plies, Face face) {
        this(g, view, Tone.of(colour, true), plies, face, List.of(), Optional.empty());
    }

    /** A pen for what lies in the shade behind the warp. */
    public static YarnPen inTheShade(Graphics2D g, View view, Color colour, int plies, Face face) {
        return new YarnPen(g, view, Tone.of(colour, false), plies, face, List.of(), Optional.empty());
    }

    /** A pen for a yarn of strands of several colours, one for each strand; of none, for a yarn of one colour. */
    YarnPen blending(List<Color> colours) {
        return new YarnPen(g, view, tone, plies, face, List.copyOf(colours), marked);
    }

    /** A pen that shows the ply only in a part of the page; everywhere if that is empty. */
    YarnPen markedIn(Optional<Rectangle2D> part) {
        return new YarnPen(g, view, tone, plies, face, strands, part);
    }

    /** One above the other: each is drawn whole before the next. */
    public void drawInOrder(List<Stretch> stretches) {
        for (Stretch stretch : stretches) {
            drawTogether(List.of(stretch));
        }
    }

    /** Side by side: all rims, then all bodies, then all lights, so that it takes as few strokes as possible. */
    public void drawTogether(List<Stretch> stretches) {
        List<Spine> spines =
                stretches.stream().map(stretch -> Spine.of(view, stretch)).toList();
        Path2D outline = roomFor(spines);
        double thickest = spines.stream().mapToDouble(Spine::thickest).max().orElse(0);
        double seen = thickest * Detail.device(g);
        boolean rimmed = seen >= (tone.lit() ? RIM_FROM : SOFT_FROM);
        // the rims of thin yarns are most of them: they must not make the cloth darker
        double faded = Math.max(0, Math.min(1, (FADED_BELOW - seen) / FADED_BELOW));
        fill(outline, spines, rimmed ? Palette.mixed(tone.rim(), tone.body(), 0.6 * faded) : tone.body(), 1, 0, 0);
        if (rimmed) {
            // as fine as a hair on a thick yarn
            double rim = Math.min(0.11, 0.9 / seen + 0.02);
            fill(outline, spines, tone.body(), 1 - 2 * rim, 0, 0.1);
        }
        if (seen >= SOFT_FROM) {
            fill(outline, spines, tone.soft(), 0.58, 0.08, 0.5);
        }
        if (tone.lit() && seen >= SOFT_FROM) {
            fill(outline, spines, tone.ridge(), 0.26, 0.14, 0.75);
        } else if (tone.lit() && seen >= RIDGE_FROM) {
            ridge(spines, thickest);
        }
        if (seen >= (strands.isEmpty() ? PLY_FROM : BLEND_FROM)) {
            ply(spines, thickest);
        }
    }

    /** One path for all that are filled, and large enough: it grows in small steps, which would cost more than the drawing. */
    private static Path2D roomFor(List<Spine> spines) {
        int points = spines.stream()
                .mapToInt(spine -> 2 * spine.x().length + ROUND_ENDS)
                .sum();
        return new Path2D.Float(Path2D.WIND_NON_ZERO, Math.max(1, points));
    }

    private void fill(Path2D outline, List<Spine> spines, Color colour, double share, double up, double sunk) {
        outline.reset();
        spines.forEach(spine -> YarnOutline.add(outline, spine, share, up, sunk));
        g.setColor(colour);
        g.fill(outline);
    }

    /** The ridge of thin yarns, as lines where they stand out. */
    private void ridge(List<Spine> spines, double thickest) {
        Path2D lines = new Path2D.Double();
        for (Spine spine : spines) {
            double[][] lit = spine.lit(0.5);
            for (int i = 0; i < lit.length; i++) {
                if (i == 0) {
                    lines.moveTo(lit[0][0], lit[0][1] - 0.14 * thickest);
                } else {
                    lines.lineTo(lit[i][0], lit[i][1] - 0.14 * thickest);
                }
            }
        }
        g.setColor(tone.ridge());
        g.setStroke(new BasicStroke((float) (thickest * 0.2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(lines);
    }

    private void ply(List<Spine> spines, double thickest) {
        if (!strands.isEmpty()) {
            blend(spines, thickest);
            return;
        }
        PlyMarks marks = new PlyMarks(List.of(new Path2D.Double()), PlyMarks.REACH, marked);
        spines.forEach(spine -> marks.add(spine, plies, face.slant()));
        stroke(marks.strokes().get(0), tone.ply(), 0.055 * thickest);
    }

    /** Each strand comes up in turn, in its own colour. */
    private void blend(List<Spine> spines, double thickest) {
        PlyMarks marks = new PlyMarks(
                strands.stream().<Path2D>map(strand -> new Path2D.Double()).toList(), STRAND_REACH, marked);
        spines.forEach(spine -> marks.add(spine, Math.max(2, plies), face.slant()));
        for (int i = 0; i < strands.size(); i++) {
            stroke(marks.strokes().get(i), strands.get(i), STRAND * thickest);
        }
    }

    private void stroke(Path2D strokes, Color colour, double thick) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(strokes);
    }
}
