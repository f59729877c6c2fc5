package thrumwright.drawing.hem;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import thrumwright.block.Shed;
import thrumwright.block.Support;
import thrumwright.drawing.Arrow;
import thrumwright.drawing.Dimension;
import thrumwright.drawing.Palette;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.SewnBand;
import thrumwright.plan.Work;

/**
 * The hem from the side, cut along the first warp end: the warp as a line, yarns as sections at their true size, the hem
 * turned back at its true thickness. The front of the cloth is to the right.
 */
public final class FoldPainter {
    /** How thick the thread of a seam is drawn, page units. */
    private static final float SEAM = 1.5f;

    /** From a bar that isn't in the hem to the hem, at least, page units. */
    static final double GAP = 14;

    private final Graphics2D g;
    private final Palette palette;

    public FoldPainter(Graphics2D g, Palette palette) {
        this.g = g;
        this.palette = palette;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** A hem folded, to scale, in the middle of a box; with its depth dimensioned where a font is given. */
    public void paint(Rectangle2D box, Plan plan, EndPlan end, Hem hem, Font font) {
        HemLine bend = HemLine.flat(hem);
        double thick = hem.stacked()
                + hem.sleeve().map(sleeve -> sleeve.support().thick()).orElse(0.0) * 0.2;
        double scale = Math.min(
                box.getHeight() * 0.9 / (shownFront(hem) + 2 * hem.thickness()), box.getWidth() * 0.45 / thick);
        boolean down = end.place() == Place.START;
        double edge = down ? box.getMaxY() - box.getHeight() * 0.05 : box.getMinY() + box.getHeight() * 0.05;
        double foldY = edge + (down ? -1 : 1) * bend.outside() * scale;
        Placing placing = new Placing(scale, box.getCenterX(), foldY, down);
        folded(placing, bend, plan, end, hem);
        dimension(placing, bend, hem, font, plan.piece().shown().height(hem.depth()));
    }

    /** How much of the front is shown beyond the fold, mm. */
    static double shownFront(Hem hem) {
        return hem.depth() * 1.15 + 1;
    }

    /** All that belongs to the hem: cloth, band, seam, and what it takes. */
    void folded(Placing placing, HemLine bend, Plan plan, EndPlan end, Hem hem) {
        cloth(placing, bend, plan, end, hem, shownFront(hem));
        hem.band().ifPresentOrElse(band -> band(placing, bend, plan, hem, band), () -> seam(placing, bend, hem));
        if (bend instanceof SleeveLine sleeve) {
            hem.sleeve().ifPresent(taken -> bar(placing, sleeve, taken.support()));
        } else {
            sleeve(placing, bend, hem);
        }
    }

    /** A bar in its sleeve. */
    private void bar(Placing placing, SleeveLine sleeve, Support support) {
        double high = support.size().mm() * placing.scale();
        double size = support.thick() * placing.scale();
        double x = placing.x(sleeve.bar().getX());
        double y = placing.y(sleeve.bar().getY());
        dot(g, section(support, x - size / 2, y, size, high), palette.post());
    }

    /** What is seen of a bar or a slat from its end. */
    private static RectangularShape section(Support support, double left, double middle, double size, double high) {
        double round = 2 * SleeveLine.CORNER * size;
        return support instanceof Support.Slat
                ? new RoundRectangle2D.Double(left, middle - high / 2, size, high, round, round)
                : new Ellipse2D.Double(left, middle - size / 2, size, size);
    }

    /** A stitch of the seam: from the edge of the turned-back cloth into the front layer, but not through it. */
    private void seam(Placing placing, HemLine bend, Hem hem) {
        double t = hem.thickness();
        double edge = bend.depth() - bend.outside();
        double behind = -hem.bends() * t - t / 2 - 0.15 * t;
        double into = Math.max(1.2, 0.5 * t);
        Path2D thread = new Path2D.Double();
        thread.moveTo(placing.x(-0.1 * t), placing.y(edge - into));
        thread.lineTo(placing.x(behind), placing.y(edge - into));
        thread.quadTo(placing.x(behind - 0.1 * t), placing.y(edge), placing.x(-t), placing.y(edge + 0.15 * t));
        thread.quadTo(placing.x(-0.3 * t), placing.y(edge + 0.2 * t), placing.x(-0.1 * t), placing.y(edge - into));
        g.setStroke(new BasicStroke(SEAM + 1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(palette.paper());
        g.draw(thread);
        g.setStroke(new BasicStroke(SEAM, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(palette.accent());
        g.draw(thread);
    }

    /** From the bend's coordinates to the page. */
    record Placing(double scale, double middle, double foldY, boolean down) {
        double x(double z) {
            return middle + z * scale;
        }

        double y(double up) {
            return foldY + (down ? -1 : 1) * up * scale;
        }
    }

    private void cloth(Placing placing, HemLine bend, Plan plan, EndPlan end, Hem hem, double shownFront) {
        double first = hem.band().map(band -> -band.ends()).orElse(0.0);
        double last = hem.cloth() + shownFront;
        Path2D warp = new Path2D.Double();
        int steps = 240;
        for (int i = 0; i <= steps; i++) {
            double[] at = bend.at(first + (last - first) * i / steps);
            if (i == 0) {
                warp.moveTo(placing.x(at[0]), placing.y(at[1]));
            } else {
                warp.lineTo(placing.x(at[0]), placing.y(at[1]));
            }
        }
        double warpDiameter = plan.piece().warpYarn().diameter();
        stroke(warp, plan, warpDiameter * placing.scale());
        for (BlockPlan block : end.blocks()) {
            if (block.stays()) {
                rows(placing, bend, block, alongCloth(end, hem, block), end.place() == Place.START);
            }
        }
        design(placing, bend, plan, end, hem, last);
    }

    private void stroke(Path2D warp, Plan plan, double width) {
        Color colour = palette.yarn(plan.piece().warpYarn().colour());
        g.setStroke(new BasicStroke((float) width + 1, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(Palette.mixed(colour, Color.BLACK, 0.5));
        g.draw(warp);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(colour);
        g.draw(warp);
    }

    /** Where a block's outer edge lies along the cloth, from the hem's outer edge. */
    static double alongCloth(EndPlan end, Hem hem, BlockPlan block) {
        return end.place() == Place.START
                ? hem.cloth() - (hem.foldLine() - block.bottom())
                : hem.cloth() - (block.top() - hem.foldLine());
    }

    private void rows(Placing placing, HemLine bend, BlockPlan block, double from, boolean upwards) {
        Work work = block.work().orElseThrow();
        int rows = work.rows().size();
        double each = block.height() / rows;
        for (int i = 0; i < rows; i++) {
            double u = from + (i + 0.5) * each;
            if (u < 0) {
                // beyond what comes out there is no cloth of this hem
                continue;
            }
            int row = upwards ? i : rows - 1 - i;
            Optional<Shed> shed = work.rows().get(row).shed();
            double radius = (work.setting().warp() + work.setting().beaten()) / 2;
            boolean over = shed.equals(Optional.of(Shed.OVER_FIRST));
            if (shed.isEmpty() || over) {
                section(placing, bend, u, radius, work, each);
            }
            if (shed.isEmpty() || !over) {
                section(placing, bend, u, -radius, work, each);
            }
        }
    }

    /** One yarn cut across: as tall as its row, as thick as it is beaten. */
    private void section(Placing placing, HemLine bend, double u, double outward, Work work, double tall) {
        double[] at = bend.at(u);
        double nz = Math.sin(at[2]);
        double ny = -Math.cos(at[2]);
        double x = placing.x(at[0] + nz * outward);
        double y = placing.y(at[1] + ny * outward);
        double thick = work.setting().beaten() * placing.scale();
        double high = Math.max(thick, Math.min(tall, work.setting().relaxed()) * placing.scale());
        Color colour = palette.yarn(work.yarn().colour());
        Ellipse2D dot = new Ellipse2D.Double(-thick / 2, -high / 2, thick, high);
        Graphics2D turned = (Graphics2D) g.create();
        turned.translate(x, y);
        turned.rotate((placing.down() ? -1 : 1) * at[2] + Math.PI / 2);
        dot(turned, dot, colour);
        turned.dispose();
    }

    /** A section with its rim and a soft light. */
    private static void dot(Graphics2D g, RectangularShape dot, Color colour) {
        g.setColor(Palette.mixed(colour, Color.BLACK, 0.06));
        g.fill(dot);
        g.setColor(Palette.mixed(colour, Color.WHITE, 0.16));
        double w = dot.getWidth();
        double h = dot.getHeight();
        RectangularShape light = (RectangularShape) dot.clone();
        light.setFrame(dot.getX() + 0.2 * w, dot.getY() + 0.2 * h, 0.6 * w, 0.6 * h);
        g.fill(light);
        g.setColor(Palette.mixed(colour, Color.BLACK, 0.46));
        g.setStroke(new BasicStroke((float) Math.max(0.3, Math.min(1.2, w * 0.1))));
        g.draw(dot);
    }

    /** The design's first picks, so that the front goes on. */
    private void design(Placing placing, HemLine bend, Plan plan, EndPlan end, Hem hem, double last) {
        double from =
                end.place() == Place.START ? hem.cloth() + end.height() - hem.foldLine() : hem.cloth() + hem.foldLine();
        double beaten = plan.piece().stripe(end.place()).beaten();
        double radius = (plan.piece().warpYarn().diameter() + beaten) / 2;
        Color colour = palette.yarn(plan.piece().stripe(end.place()).colour());
        Shed first = end.place() == Place.START
                ? end.after().nextShed()
                : plan.afterDesign().lastShed().orElse(Shed.OVER_FIRST);
        boolean over = first == Shed.OVER_FIRST;
        for (double u = from + beaten / 2; u < last; u += beaten) {
            double[] at = bend.at(u);
            double outward = over ? radius : -radius;
            double thick = beaten * placing.scale();
            Ellipse2D dot = new Ellipse2D.Double(
                    placing.x(at[0] + Math.sin(at[2]) * outward) - thick / 2,
                    placing.y(at[1] - Math.cos(at[2]) * outward) - thick / 2,
                    thick,
                    thick);
            dot(g, dot, Palette.mixed(colour, palette.paper(), 0.3));
            over = !over;
        }
    }

    /**
     * The band over cloth and warp ends that are turned back, close on whatever lies under it, and a stitch at either of its
     * edges.
     */
    private void band(Placing placing, HemLine bend, Plan plan, Hem hem, SewnBand band) {
        double half = band.thickness() / 2;
        double onCloth = -1.5 * hem.thickness() - half;
        double onEnds = -hem.thickness() - plan.piece().warpYarn().diameter() / 2 - half;
        double onBack = -hem.thickness() / 2 - half;
        double slope = Math.min(band.ends(), hem.thickness());
        double[][] along = {
            {SewnBand.BACK, hem.cloth() > 0 ? onCloth : onEnds},
            {band.turned(), hem.cloth() > 0 ? onCloth : onEnds},
            {band.turned() + slope, onEnds},
            {band.turned() + band.ends(), onEnds},
            {band.turned() + band.ends() + slope, onBack},
            {band.depth(), onBack}
        };
        Path2D path = new Path2D.Double();
        for (double[] at : along) {
            double up = Math.min(band.depth(), Math.max(SewnBand.BACK, at[0])) - bend.outside();
            if (path.getCurrentPoint() == null) {
                path.moveTo(placing.x(at[1]), placing.y(up));
            } else {
                path.lineTo(placing.x(at[1]), placing.y(up));
            }
        }
        double width = Math.max(1.5, band.thickness() * placing.scale());
        g.setStroke(new BasicStroke((float) width + 1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.setColor(palette.ink());
        g.draw(path);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.setColor(palette.paper());
        g.draw(path);
        stitch(placing, bend, along[0][1], -hem.thickness() / 2, SewnBand.BACK + 1);
        stitch(placing, bend, onBack, 0, band.depth() - 1);
    }

    /** A stitch from outside a band to what it is sewn to. */
    private void stitch(Placing placing, HemLine bend, double band, double inside, double up) {
        double y = placing.y(up - bend.outside());
        g.setColor(palette.accent());
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(placing.x(band) - 3, y, placing.x(inside), y));
    }

    /** A bar or slat beside the hem that is to take it, and an arrow to where it goes; a strip where it is sewn on. */
    private void sleeve(Placing placing, HemLine bend, Hem hem) {
        hem.sleeve().ifPresent(sleeve -> {
            Support support = sleeve.support();
            double edge = placing.x(hem.thickness() / 2 - hem.stacked());
            double y = placing.y(hem.depth() / 2 - bend.outside());
            double high = support.size().mm() * placing.scale();
            if (support instanceof Support.Strip) {
                strip(edge, y, high, Math.max(3, 1.5 * placing.scale()));
                return;
            }
            double size = support.thick() * placing.scale();
            double gap = Math.max(GAP, 0.35 * size);
            dot(g, section(support, edge - gap - size, y, size, high), palette.post());
            double between = -hem.bends() * hem.thickness() / 2;
            new Arrow(g, palette).level(edge - gap, placing.x(between), y, Math.min(4, 0.25 * gap));
        });
    }

    /** The soft side of a strip, with its pile outwards. */
    private void strip(double edge, double y, double high, double thick) {
        Rectangle2D strip = new Rectangle2D.Double(edge - thick, y - high / 2, thick, high);
        g.setColor(palette.post());
        g.fill(strip);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(strip);
        double apart = Math.max(2, high / 12);
        for (double at = y - high / 2 + apart / 2; at < y + high / 2; at += apart) {
            g.draw(new Line2D.Double(edge - thick, at, edge - thick * 1.7, at));
        }
    }

    /** The depth, from the turned edge to the hem's inner edge. */
    private void dimension(Placing placing, HemLine bend, Hem hem, Font font, String depth) {
        double x = placing.x(hem.thickness() / 2) + 8;
        double from = placing.y(-bend.outside());
        double to = placing.y(hem.depth() - bend.outside());
        new Dimension(g, palette.ink(), font).upright(x, from, to, depth);
    }
}
