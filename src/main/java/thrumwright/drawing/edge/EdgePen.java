package thrumwright.drawing.edge;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.Setting;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Face;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** Draws what is seen where warp ends are finished: the edge of the cloth, ends as cords, knots. */
record EdgePen(Graphics2D g, Palette palette) {
    /** The edge of the cloth, in the design's yarn on as many ends. */
    void cloth(Rectangle2D box, double edge, double left, double pitch, int ends, Plan plan, EndPlan end) {
        double thick = Math.min(pitch * 0.6, (edge - box.getMinY()) * 0.3);
        Setting setting = new Setting(ends, pitch, pitch * 0.25, thick, thick / 2, Optional.empty());
        int picks = (int) Math.ceil((edge - box.getMinY()) / setting.beaten()) + 1;
        BlockPicture band = BlockPicture.picks(plan.piece().stripe(end.place()), setting, picks, Course.beginning());
        new ClothPainter(g, palette, true, Face.FRONT)
                .blocks(
                        new View(1, left, edge),
                        List.of(new ClothPainter.PlacedBlock(band, 0, band.height())),
                        List.of(),
                        setting,
                        plan.piece().warpYarn(),
                        0,
                        band.height());
    }

    void dashed(Line2D line, float width, float unit, Color colour) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(
                width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {3 * unit, 4 * unit}, 0));
        g.draw(line);
    }

    /** An overhand knot from the front: two loops crossing. */
    void knot(double x, double y, double size, Color warp) {
        Path2D loop = new Path2D.Double();
        loop.moveTo(x - size * 0.75, y - size * 0.25);
        loop.curveTo(x - size * 0.2, y - size * 0.75, x + size * 0.9, y - size * 0.3, x + size * 0.6, y + size * 0.35);
        cord(loop, size * 0.62, warp);
        Path2D across = new Path2D.Double();
        across.moveTo(x + size * 0.75, y - size * 0.3);
        across.curveTo(x + size * 0.2, y + size * 0.1, x - size * 0.2, y + size * 0.25, x - size * 0.7, y + size * 0.4);
        cord(across, size * 0.62, warp);
    }

    void cord(Path2D path, double width, Color colour) {
        stroke(path, width * 1.16 + 0.4, Palette.mixed(colour, Color.BLACK, 0.46));
        stroke(path, width * 0.92, Palette.mixed(colour, Color.BLACK, 0.06));
        stroke(path, width * 0.55, Palette.mixed(colour, Color.WHITE, 0.16));
        stroke(path, width * 0.22, Palette.mixed(colour, Color.WHITE, 0.38));
    }

    private void stroke(Path2D path, double width, Color colour) {
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(colour);
        g.draw(path);
    }
}
