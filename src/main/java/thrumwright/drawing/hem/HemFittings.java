package thrumwright.drawing.hem;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import java.awt.geom.RoundRectangle2D;
import thrumwright.block.Support;
import thrumwright.drawing.Palette;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.SewnBand;

/** What is sewn to a hem or slides into it: seam, band, bar, slat or strip. */
record HemFittings(Graphics2D g, Palette palette, HemPlacing placing, HemLine bend) {
    /** How thick the thread of a seam is drawn, page units. */
    private static final float SEAM = 1.5f;

    void draw(Plan plan, Hem hem) {
        sewn(plan, hem);
        if (bend instanceof SleeveLine sleeve) {
            hem.sleeve().ifPresent(taken -> bar(sleeve, taken.support()));
        } else {
            sleeve(hem);
        }
    }

    /** Band or seam alone. */
    void sewn(Plan plan, Hem hem) {
        hem.band().ifPresentOrElse(band -> band(plan, hem, band), () -> seam(hem));
    }

    /**
     * The band over cloth and warp ends that are turned back, close on whatever lies under it, and a stitch at either of its
     * edges.
     */
    private void band(Plan plan, Hem hem, SewnBand band) {
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
        stitch(along[0][1], -hem.thickness() / 2, SewnBand.BACK + 1);
        stitch(onBack, 0, band.depth() - 1);
    }

    /** A stitch from outside a band to what it is sewn to. */
    private void stitch(double band, double inside, double up) {
        double y = placing.y(up - bend.outside());
        g.setColor(palette.accent());
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(placing.x(band) - 3, y, placing.x(inside), y));
    }

    /** A bar or slat beside the hem that has no room for it; a strip where it is sewn on. */
    private void sleeve(Hem hem) {
        hem.sleeve().ifPresent(sleeve -> {
            Support support = sleeve.support();
            double edge = placing.x(hem.thickness() / 2 - hem.stacked());
            double y = placing.y(hem.depth() / 2 - bend.outside());
            double high = support.size().mm() * placing.scale();
            if (support.kind() == Support.Kind.STRIP) {
                strip(edge, y, high, Math.max(3, 1.5 * placing.scale()));
                return;
            }
            double size = support.thick() * placing.scale();
            double gap = Math.max(FoldPainter.GAP, 0.35 * size);
            HemPainting.dot(g, section(support, edge - gap - size, y, size, high), palette.post());
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

    /** A bar in its sleeve. */
    private void bar(SleeveLine sleeve, Support support) {
        double high = support.size().mm() * placing.scale();
        double size = support.thick() * placing.scale();
        double x = placing.x(sleeve.bar().getX());
        double y = placing.y(sleeve.bar().getY());
        HemPainting.dot(g, section(support, x - size / 2, y, size, high), palette.post());
    }

    /** What is seen of a bar or a slat from its end. */
    private static RectangularShape section(Support support, double left, double middle, double size, double high) {
        double round = 2 * SleeveLine.CORNER * size;
        return support.kind() == Support.Kind.SLAT
                ? new RoundRectangle2D.Double(left, middle - high / 2, size, high, round, round)
                : new Ellipse2D.Double(left, middle - size / 2, size, size);
    }

    /** A stitch of the seam: from the edge of the turned-back cloth into the front layer, but not through it. */
    private void seam(Hem hem) {
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
}
