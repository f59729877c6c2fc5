package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.YarnPen;

/**
 * Strands that wind about each other: two plied, three plaited. Each is cut where it passes to the front or back; what
 * lies behind is drawn first.
 *
 * @param x of its middle, page units
 * @param from y at which it begins, page units
 * @param size thickness, page units
 * @param strands 2 or 3
 * @param turn 1, or −1 for the other way round
 * @param lean how far it goes aside on its way down, as a share of it
 */
record TwistedCord(double x, double from, double size, int strands, int turn, double lean) {
    TwistedCord(double x, double from, double size, int strands, int turn) {
        this(x, from, size, strands, turn, 0);
    }

    private static final int POINTS = 9;
    /** Page units as they are, but counted upwards. */
    private static final View PAGE = new View(1, 0, 0);

    /** Page units in which a strand comes round once. */
    private double pitch() {
        return size * (plied() ? 3.4 : 5);
    }

    private boolean plied() {
        return strands == 2;
    }

    TwistedCord slanting(double aside) {
        return new TwistedCord(x, from, size, strands, turn, aside);
    }

    /** Twisted, or its strands side by side. */
    void drawOrLoose(Graphics2D g, double to, Color warp, boolean twisted) {
        if (twisted) {
            draw(g, to, warp);
            return;
        }
        YarnPen pen = new YarnPen(g, PAGE, warp, 2, Face.FRONT);
        for (int strand = 0; strand < strands; strand++) {
            double aside = (strand - (strands - 1) / 2.0) * 0.6 * size;
            double middle = (from + to) / 2;
            pen.drawInOrder(List.of(Stretch.loose(
                    new double[] {x + aside, x + aside + lean * (middle - from) * 0.8, x + aside + lean * (to - from)},
                    new double[] {-from, -middle, -to},
                    0.72 * size)));
        }
    }

    /** Where a strand is at some height, page units. */
    double xAt(int strand, double y) {
        double angle = 2 * Math.PI * strand / strands + 2 * Math.PI * (y - from) / pitch();
        return across(angle) + lean * (y - from);
    }

    private double across(double angle) {
        return x + turn * Math.sin(angle) * size * (plied() ? 0.40 : 0.70);
    }

    /** @param to y at which it ends, page units */
    void draw(Graphics2D g, double to, Color warp) {
        List<Stretch> cut = new ArrayList<>();
        for (int strand = 0; strand < strands; strand++) {
            cut(2 * Math.PI * strand / strands, to, cut);
        }
        YarnPen pen = new YarnPen(g, PAGE, warp, 2, Face.FRONT);
        pen.drawInOrder(cut.stream().filter(stretch -> !stretch.front()).toList());
        pen.drawInOrder(cut.stream().filter(Stretch::front).toList());
    }

    /** Cuts the strand that begins at this angle. */
    private void cut(double phase, double to, List<Stretch> cut) {
        double part = plied() ? Math.PI : Math.PI / 2;
        double first = plied() ? -Math.PI / 2 : 0;
        double all = phase + 2 * Math.PI * (to - from) / pitch();
        for (double angle = first + Math.floor((phase - first) / part) * part; angle < all; angle += part) {
            double begins = Math.max(phase, angle);
            double ends = Math.min(all, angle + part);
            if (ends - begins > 0.05) {
                cut.add(wound(phase, begins, ends));
            }
        }
    }

    private Stretch wound(double phase, double begins, double ends) {
        double[] xs = new double[POINTS];
        double[] ys = new double[POINTS];
        double[] widths = new double[POINTS];
        double[] lifts = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double angle = begins + (ends - begins) * i / (POINTS - 1);
            double depth = depth(angle);
            double down = pitch() * (angle - phase) / (2 * Math.PI);
            xs[i] = across(angle) + lean * down;
            ys[i] = -(from + down);
            double near = Math.sqrt(Math.max(0, Math.abs(depth)));
            widths[i] = size * (plied() ? 0.45 + 0.57 * near : 0.5 + 0.36 * near);
            lifts[i] = Math.abs(depth);
        }
        boolean front = depth((begins + ends) / 2) > 0;
        return new Stretch(front, begins, ends - begins, false, false, xs, ys, widths, lifts);
    }

    /** How far towards the eye a strand lies, −1 to 1. */
    private double depth(double angle) {
        return plied() ? Math.cos(angle) : Math.sin(2 * angle);
    }
}
