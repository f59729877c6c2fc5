package thrumwright.drawing.edge;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Setting;
import thrumwright.block.WarpLoops;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.YarnPen;
import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/**
 * Draws the loops of a closed warp and what they lie round. Round a rod one end of each loop comes down in front and the
 * other goes up behind; round a nail both lie in the plane of the warp.
 *
 * @param view with y = 0 at the edge of the cloth
 * @param warp any yarn on the warp
 * @param outward the way from the cloth to the loops: −1 down, +1 up
 */
public record LoopPen(Graphics2D g, Palette palette, View view, Setting warp, Yarn yarn, Face face, int outward) {
    /** How far a rod or a cord runs beyond the edge ends, in distances between ends. */
    public static final double BEYOND = 1.1;

    /** How far a tied end hangs below what it is tied to, in thicknesses of the warp. */
    private static final double TAIL = 3;

    /** How far loops and tails reach beyond the edge of the cloth round what is {@code thick} mm thick: mm, 0 or more. */
    public static double reach(Setting warp, double thick) {
        return thick + (1.5 + TAIL) * warp.warp();
    }

    /**
     * @param place of the end: it says which ends make a loop
     * @param round what the loops lie round
     * @param thick how thick that is, mm, 0 or more
     */
    public void draw(Place place, WarpLoops.Held round, double thick) {
        if (round == WarpLoops.Held.LINKED) {
            new LinkPen(this).draw(place);
            return;
        }
        int first = firstSeen();
        int last = lastSeen();
        List<Stretch> loops = new ArrayList<>();
        List<Stretch> inFront = new ArrayList<>();
        List<Double> nails = new ArrayList<>();
        for (int end = first; end <= last; end++) {
            boolean opens = end % 2 == (place == Place.START ? 1 : 0) && end + 1 < warp.ends();
            boolean closes = end % 2 == (place == Place.START ? 0 : 1) && end > 0;
            if (opens && round.across()) {
                loops.add(rounded(end, thick));
            } else if (opens) {
                loops.add(roundNail(end, thick));
                nails.add((end + 0.5) * warp.spacing());
            } else if (!closes) {
                tied(end, thick, round, loops, inFront, nails);
            }
            if (round.across() && opens == (face == Face.FRONT) && opens != closes) {
                inFront.add(upright(end, thick + warp.warp() / 2));
            }
        }
        YarnPen pen = new YarnPen(g, view, palette.yarn(yarn.colour()), yarn.plies(), face);
        pen.drawTogether(loops);
        nails.forEach(x -> nail(x, thick));
        if (round == WarpLoops.Held.ROD) {
            rod(thick);
        } else if (round.across()) {
            cord(thick);
        }
        pen.drawTogether(inFront);
    }

    int firstSeen() {
        Rectangle2D visible = g.getClipBounds();
        return visible == null ? 0 : Math.max(0, (int) Math.floor(view.clothX(visible.getMinX()) / warp.spacing()) - 2);
    }

    int lastSeen() {
        Rectangle2D visible = g.getClipBounds();
        int last = warp.ends() - 1;
        return visible == null
                ? last
                : Math.min(last, (int) Math.ceil(view.clothX(visible.getMaxX()) / warp.spacing()) + 2);
    }

    /** From its end in front, round below, to the next end behind. */
    private Stretch rounded(int end, double thick) {
        double left = end * warp.spacing();
        double right = left + warp.spacing();
        double low = thick + warp.warp() / 2;
        double bend = Math.min(warp.spacing() * 0.3, thick * 0.5 + warp.warp());
        return line(
                new double[] {left, left, left + bend * 0.35, (left + right) / 2, right - bend * 0.35, right, right},
                new double[] {0, low - bend * 0.4, low, low + 0.12 * warp.warp(), low, low - bend * 0.4, 0});
    }

    /** Both ends lead to a nail between them, and half round it. */
    Stretch roundNail(int end, double thick) {
        double middle = (end + 0.5) * warp.spacing();
        double radius = (thick + warp.warp()) / 2;
        double down = thick / 2;
        int steps = 8;
        double[] x = new double[steps + 3];
        double[] y = new double[steps + 3];
        x[0] = end * warp.spacing();
        x[steps + 2] = x[0] + warp.spacing();
        for (int i = 0; i <= steps; i++) {
            double angle = Math.PI * i / steps;
            x[i + 1] = middle - radius * Math.cos(angle);
            y[i + 1] = down + radius * Math.sin(angle);
        }
        return line(x, y);
    }

    private Stretch upright(int end, double down) {
        double x = end * warp.spacing();
        return line(new double[] {x, x, x}, new double[] {0, down / 2, down});
    }

    /** Where the yarn begins or ends: once round, a knot, and a short tail. */
    private void tied(
            int end,
            double thick,
            WarpLoops.Held round,
            List<Stretch> loops,
            List<Stretch> inFront,
            List<Double> nails) {
        double x = end * warp.spacing();
        double d = warp.warp();
        double low = thick + d / 2;
        if (!round.across()) {
            nails.add(x);
        }
        inFront.add(line(new double[] {x, x, x + 0.1 * d}, new double[] {0, low, low + TAIL * d}));
        double knot = round.across() ? low + 0.6 * d : low;
        inFront.add(line(new double[] {x - d, x, x + d}, new double[] {knot - 0.5 * d, knot, knot + 0.5 * d}));
        inFront.add(line(new double[] {x - d, x, x + d}, new double[] {knot + 0.5 * d, knot, knot - 0.5 * d}));
    }

    Stretch line(double[] x, double[] down) {
        double[] y = new double[down.length];
        for (int i = 0; i < y.length; i++) {
            y[i] = outward * down[i];
        }
        return Stretch.loose(x, y, warp.warp());
    }

    private void rod(double thick) {
        double left = view.x(-BEYOND * warp.spacing());
        double wide = view.x(warp.span() + BEYOND * warp.spacing()) - left;
        double high = view.length(thick);
        double top = Math.min(view.y(0), view.y(outward * thick));
        double rounding = high * 0.6;
        fill(new RoundRectangle2D.Double(left, top, wide, high, rounding, rounding), palette.post());
        Color light = Palette.mixed(palette.post(), palette.paper(), 0.45);
        g.setColor(light);
        g.fill(new RoundRectangle2D.Double(
                left + rounding / 3, top + high * 0.22, wide - rounding * 2 / 3, high * 0.24, high * 0.2, high * 0.2));
    }

    private void nail(double x, double thick) {
        double size = view.length(thick);
        double middle = view.y(outward * thick / 2);
        fill(new Ellipse2D.Double(view.x(x) - size / 2, middle - size / 2, size, size), palette.post());
    }

    private void fill(Shape shape, Color colour) {
        g.setColor(colour);
        g.fill(shape);
        g.setColor(Palette.mixed(palette.post(), palette.ink(), 0.55));
        g.setStroke(new BasicStroke((float) Math.max(0.4, Math.min(1.1, view.length(warp.warp()) * 0.12))));
        g.draw(shape);
    }

    private void cord(double thick) {
        double y = outward * thick / 2;
        double left = -BEYOND * warp.spacing();
        double right = warp.span() + BEYOND * warp.spacing();
        Color colour = Palette.mixed(palette.yarn(yarn.colour()), Color.BLACK, 0.12);
        Stretch along = Stretch.loose(new double[] {left, (left + right) / 2, right}, new double[] {y, y, y}, thick);
        new YarnPen(g, view, colour, Math.max(2, yarn.plies()), face).drawTogether(List.of(along));
    }
}
