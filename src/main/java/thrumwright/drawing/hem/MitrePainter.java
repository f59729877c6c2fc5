package thrumwright.drawing.hem;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Arrow;
import thrumwright.drawing.Dimension;
import thrumwright.drawing.Palette;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Mitre;
import thrumwright.plan.Plan;

/**
 * A corner of a hem turned in at 45°, seen from the back before the hem is folded: where it was, dashed; where it lies now; the
 * fold line; and how far from the side it is turned in.
 *
 * @param font null for no words
 */
public record MitrePainter(Graphics2D g, Palette palette, Font font) {
    /** From mm beside the side and outwards of the fold line to the page. */
    private record CornerPlacing(double left, double fold, double scale, int outward) {
        double x(double mm) {
            return left + mm * scale;
        }

        double y(double mm) {
            return fold + outward * mm * scale;
        }

        Path2D polygon(double... at) {
            Path2D polygon = new Path2D.Double();
            polygon.moveTo(x(at[0]), y(at[1]));
            for (int i = 2; i < at.length; i += 2) {
                polygon.lineTo(x(at[i]), y(at[i + 1]));
            }
            polygon.closePath();
            return polygon;
        }
    }

    public void paint(Rectangle2D box, Plan plan, EndPlan end, Hem hem, Mitre mitre) {
        double words = font == null ? 0 : font.getSize2D() + 9;
        double inside = 0.45 * hem.cloth();
        double across = 1.9 * mitre.leg();
        double scale = Math.min(
                (box.getHeight() - words - 4) / (hem.cloth() + inside), (box.getWidth() - 6) / (across + inside / 4));
        boolean down = end.place() == Place.START;
        double left = box.getCenterX() - across * scale / 2;
        double middle = box.getCenterY() - (down ? words : -words) / 2;
        double fold = middle + (down ? 1 : -1) * (inside - hem.cloth()) * scale / 2;
        CornerPlacing placing = new CornerPlacing(left, fold, scale, down ? 1 : -1);
        Color cloth = palette.yarn(plan.piece().stripe(end.place()).colour());
        double right = across;
        fill(
                placing.polygon(
                        0, -inside, 0, mitre.back(), mitre.leg(), hem.cloth(), right, hem.cloth(), right, -inside),
                Palette.mixed(cloth, palette.paper(), 0.55));
        corner(placing, hem, mitre, Palette.mixed(cloth, palette.paper(), 0.2));
        foldLine(placing, right);
        leg(placing, hem, mitre, plan.piece().shown().height(mitre.leg()));
    }

    private void fill(Path2D shape, Color colour) {
        g.setColor(colour);
        g.fill(shape);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.9f));
        g.draw(shape);
    }

    /** Where the corner was, where it lies, and the way between. */
    private void corner(CornerPlacing placing, Hem hem, Mitre mitre, Color colour) {
        fill(placing.polygon(0, mitre.back(), mitre.leg(), hem.cloth(), mitre.leg(), mitre.back()), colour);
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(0.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 2}, 0));
        Path2D was = new Path2D.Double();
        was.moveTo(placing.x(0), placing.y(mitre.back()));
        was.lineTo(placing.x(0), placing.y(hem.cloth()));
        was.lineTo(placing.x(mitre.leg()), placing.y(hem.cloth()));
        g.draw(was);
        double third = mitre.leg() * 0.2;
        new Arrow(g, palette)
                .straight(
                        placing.x(third),
                        placing.y(hem.cloth() - third),
                        placing.x(mitre.leg() - third),
                        placing.y(mitre.back() + third),
                        3);
    }

    private void foldLine(CornerPlacing placing, double right) {
        double beyond = 4;
        g.setColor(palette.accent());
        g.setStroke(new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 3}, 0));
        g.draw(new Line2D.Double(placing.x(0) - beyond, placing.y(0), placing.x(right) + beyond, placing.y(0)));
    }

    private void leg(CornerPlacing placing, Hem hem, Mitre mitre, String measure) {
        double y = placing.y(hem.cloth()) + placing.outward() * 5;
        new Dimension(g, palette.ink(), font)
                .level(placing.x(0), placing.x(mitre.leg()), y, placing.outward() > 0, measure);
    }
}
