package thrumwright.drawing.hem;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Support;
import thrumwright.drawing.Dimension;
import thrumwright.drawing.HandWay;
import thrumwright.drawing.Needle;
import thrumwright.drawing.Palette;
import thrumwright.drawing.PictureLabels;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;

/**
 * A hem as it is worked: the piece lies face down and is seen from its side, so that the back is above; the hem is folded from
 * the left. With its depth, or stage by stage with the hand's ways.
 *
 * @param font of measures, labels and numbers; null for none
 */
public record HemLying(Graphics2D g, Palette palette, Font font, PictureLabels labels) {
    /** No stage: what comes of it. */
    public static final int WHOLE = -1;

    private static final int FLAT = 0;
    private static final int FOLDING = 1;
    private static final int SEWING = 2;
    private static final int SLIDING = 3;
    /** How far it is turned while it is folded, radians. */
    private static final double HALF_WAY = 0.6 * Math.PI;
    /** Shares of the box that the hem takes at most. */
    private static final double WIDE = 0.95;

    private static final double HIGH = 0.4;
    /** Of the box's height: how far what slides in stands out, across and down. */
    private static final double OUT = 0.27;

    private static final int STEPS = 60;

    /** One hem in a box at one stage. */
    private record Scene(Rectangle2D box, Plan plan, EndPlan end, Hem hem, HemLine line, int stage) {
        /** The bar in it, if it is there at this stage. */
        Optional<SleeveLine> sleeve() {
            return line instanceof SleeveLine sleeve ? Optional.of(sleeve) : Optional.empty();
        }
    }

    /**
     * Where it lies on the page.
     *
     * @param x of the bend
     * @param y of the front layer's mid-plane
     * @param scale page units per mm
     */
    private record Lying(double x, double y, double scale) {
        double across(double up) {
            return x + up * scale;
        }

        double down(double z) {
            return y + z * scale;
        }
    }

    /** @param stage from 0, or {@link #WHOLE} */
    public void paint(Rectangle2D box, Plan plan, EndPlan end, Hem hem, int stage) {
        Scene scene = new Scene(box, plan, end, hem, line(hem, stage), stage);
        Lying lying = placed(scene);
        Graphics2D turned = (Graphics2D) g.create();
        turned.translate(lying.x(), lying.y());
        turned.rotate(Math.PI / 2);
        hem(new FoldPainter(turned, palette), new HemPlacing(lying.scale(), 0, 0, true), scene);
        turned.dispose();
        around(scene, lying);
    }

    private static void hem(FoldPainter painter, HemPlacing placing, Scene in) {
        if (in.stage() == FLAT || in.stage() == FOLDING) {
            painter.cloth(placing, in.line(), in.plan(), in.end(), in.hem());
        } else if (in.sleeve().isEmpty()
                && in.hem().sleeve().filter(Hem.Sleeve::slidesIn).isPresent()) {
            painter.sewn(placing, in.line(), in.plan(), in.end(), in.hem());
        } else {
            painter.folded(placing, in.line(), in.plan(), in.end(), in.hem());
        }
    }

    private static HemLine line(Hem hem, int stage) {
        return switch (stage) {
            case FLAT -> HemLine.turned(hem, 0);
            case FOLDING -> HemLine.turned(hem, HALF_WAY);
            case SEWING -> HemLine.flat(hem);
            default -> SleeveLine.of(hem).<HemLine>map(sleeve -> sleeve).orElse(HemLine.flat(hem));
        };
    }

    private Lying placed(Scene in) {
        Rectangle2D reach = reach(in);
        double thick = in.hem().thickness();
        Rectangle2D box = in.box();
        double beside = font == null ? 0 : 2 * Math.max(half(labels.front()), half(labels.back())) + font.getSize2D();
        double wide = WIDE * box.getWidth() - beside;
        double high = (in.stage() == FOLDING ? 0.62 : HIGH) * box.getHeight();
        double scale = Math.min(wide / (reach.getWidth() + thick), high / (reach.getHeight() + 1.5 * thick));
        double x = box.getCenterX() - beside / 2 - scale * reach.getCenterX();
        double y = box.getMinY() + 0.62 * box.getHeight() - scale * reach.getMaxY();
        return new Lying(x, y, scale);
    }

    /** All that its mid-plane reaches: up from the bend, and towards the front, mm. */
    private static Rectangle2D reach(Scene in) {
        double first = in.hem().band().map(band -> -band.ends()).orElse(0.0);
        double last = in.hem().cloth() + FoldPainter.shownFront(in.hem());
        double[] begin = in.line().at(first);
        Rectangle2D reach = new Rectangle2D.Double(begin[1], begin[0], 0, 0);
        for (int i = 1; i <= STEPS; i++) {
            double[] at = in.line().at(first + (last - first) * i / STEPS);
            reach.add(at[1], at[0]);
        }
        return reach;
    }

    /** What stands beside the hem: labels, its measure, the needle, what slides in, and the hand's way. */
    private void around(Scene in, Lying lying) {
        if (in.stage() == WHOLE && in.sleeve().isEmpty()) {
            depth(in, lying);
        }
        in.sleeve().ifPresent(sleeve -> bar(in, lying, sleeve));
        boolean sewn = in.hem().band().isEmpty() && in.sleeve().isEmpty();
        if (sewn && (in.stage() == WHOLE || in.stage() == SEWING)) {
            needle(in, lying);
        }
        labels(in, lying);
        way(in, lying, HandWay.in(in.box(), g, palette, font));
    }

    private void way(Scene in, Lying lying, HandWay hand) {
        if (in.stage() == FLAT) {
            foldLine(in, lying, hand);
        } else if (in.stage() == FOLDING) {
            hand.along(List.of(swing(in, lying)), FOLDING + 1);
        } else if (in.stage() == SEWING) {
            double x = seam(in, lying);
            double y = lying.down(-in.hem().stacked());
            double size = 0.2 * in.box().getHeight();
            hand.straight(x - 1.3 * size, y - size, x - 0.35 * size, y - 0.3 * size, SEWING + 1);
        }
    }

    private double seam(Scene in, Lying lying) {
        return lying.across(in.line().depth() - in.line().outside());
    }

    private void depth(Scene in, Lying lying) {
        double below = lying.down(in.hem().thickness() / 2) + 0.07 * in.box().getHeight();
        String depth = in.plan().piece().shown().height(in.hem().depth());
        new Dimension(g, palette.ink(), font)
                .level(lying.across(-in.line().outside()), seam(in, lying), below, true, depth);
    }

    /** Beyond the end of the front layer, above and below its line. */
    private void labels(Scene in, Lying lying) {
        if (font == null) {
            return;
        }
        double[] last = in.line().at(in.hem().cloth() + FoldPainter.shownFront(in.hem()));
        double x = lying.across(last[1]) + 0.6 * font.getSize2D();
        double up = 0.7 * font.getSize2D();
        double y = lying.down(last[0]);
        PictureLabels.draw(g, palette, font, labels.back(), x + half(labels.back()), y - up);
        PictureLabels.draw(g, palette, font, labels.front(), x + half(labels.front()), y + up);
    }

    private double half(String label) {
        return PictureLabels.width(label, font) / 2;
    }

    /** From the right above into the seam, with its thread. */
    private void needle(Scene in, Lying lying) {
        double x = seam(in, lying);
        double y = lying.down(-in.hem().stacked() + in.hem().thickness() / 2);
        double length = 0.24 * in.box().getHeight();
        double angle = Math.PI * 0.8;
        double eyeX = x - length * Math.cos(angle);
        double eyeY = y - length * Math.sin(angle);
        Path2D thread = new Path2D.Double();
        thread.moveTo(x - 2, y);
        thread.curveTo(x, y - 0.9 * length, eyeX - 0.4 * length, eyeY - 0.4 * length, eyeX, eyeY);
        g.setColor(palette.accent());
        g.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(thread);
        new Needle(g, palette).draw(x + 1, y, length, 0.11 * length, angle);
    }

    private void foldLine(Scene in, Lying lying, HandWay hand) {
        double y = lying.down(-in.hem().thickness());
        double top = y - 0.26 * in.box().getHeight();
        g.setColor(palette.accent());
        g.setStroke(new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 3}, 0));
        g.draw(new Line2D.Double(lying.x(), lying.down(0.9 * in.hem().thickness()), lying.x(), top));
        hand.number(lying.x(), top, FLAT + 1);
    }

    /** From where the hem's edge is now to where it will lie. */
    private static HandWay.Bit swing(Scene in, Lying lying) {
        double radius = 0.75 * in.hem().cloth();
        double[] x = new double[STEPS];
        double[] y = new double[STEPS];
        for (int i = 0; i < STEPS; i++) {
            double angle = 1.06 * HALF_WAY + (0.92 * Math.PI - 1.06 * HALF_WAY) * i / (STEPS - 1);
            x[i] = lying.across(-radius * Math.cos(angle));
            y[i] = lying.down(-radius * Math.sin(angle));
        }
        return new HandWay.Bit(x, y, false);
    }

    /** What slides in, from the side of the piece: towards whoever looks at that side, and slanting so that it is seen. */
    private void bar(Scene in, Lying lying, SleeveLine sleeve) {
        Support support = in.hem().sleeve().orElseThrow().support();
        Rod rod = new Rod(
                lying.across(sleeve.bar().getY()),
                lying.down(sleeve.bar().getX()),
                support.size().mm() * lying.scale(),
                support.thick() * lying.scale(),
                support.kind() == Support.Kind.SLAT);
        double out = OUT * in.box().getHeight();
        rod.draw(g, palette, out);
        HandWay hand = HandWay.in(in.box(), g, palette, font);
        hand.straight(
                rod.x() + out,
                rod.y() + out,
                rod.x() + 0.1 * out,
                rod.y() + 0.1 * out,
                in.stage() == WHOLE ? 0 : SLIDING + 1);
    }
}
