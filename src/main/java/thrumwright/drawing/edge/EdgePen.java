package thrumwright.drawing.edge;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.block.Setting;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Face;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/** Draws what is seen where warp ends are finished: the edge of the cloth, ends as cords, knots. */
record EdgePen(Graphics2D g, Palette palette) {
    /** The edge of the cloth, with what holds it there, on as many ends. */
    void cloth(Rectangle2D box, double edge, double left, double pitch, int ends, Plan plan, EndPlan end) {
        EdgeCloth cloth = new EdgeCloth(plan, end, ends, pitch, edge - box.getMinY());
        cloth(cloth, cloth.blocks(), new View(1, left, edge), Face.FRONT);
    }

    /** Those blocks of it, from one side. */
    void cloth(EdgeCloth cloth, List<ClothPainter.PlacedBlock> blocks, View view, Face face) {
        Yarn warp = cloth.plan().piece().warpYarn();
        Setting ground = cloth.setting(cloth.plan().piece().setting(warp));
        new ClothPainter(g, palette, true, face)
                .blocks(view, blocks, List.of(), ground, warp, 0, cloth.high() + cloth.pitch());
    }

    void dashed(Line2D line, float width, float unit, Color colour) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(
                width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {3 * unit, 4 * unit}, 0));
        g.draw(line);
    }

    /** With round ends. */
    void cord(Path2D path, double width, Color colour) {
        cord(path, width, colour, BasicStroke.CAP_ROUND);
    }

    /** Part of one, where the rest of it lies beneath something. */
    void cut(Path2D path, double width, Color colour) {
        cord(path, width, colour, BasicStroke.CAP_BUTT);
    }

    private void cord(Path2D path, double width, Color colour, int cap) {
        stroke(path, width * 1.16 + 0.4, Palette.mixed(colour, Color.BLACK, 0.46), cap);
        stroke(path, width * 0.92, Palette.mixed(colour, Color.BLACK, 0.06), cap);
        stroke(path, width * 0.55, Palette.mixed(colour, Color.WHITE, 0.16), cap);
        stroke(path, width * 0.22, Palette.mixed(colour, Color.WHITE, 0.38), cap);
    }

    private void stroke(Path2D path, double width, Color colour, int cap) {
        g.setStroke(new BasicStroke((float) width, cap, BasicStroke.JOIN_ROUND));
        g.setColor(colour);
        g.draw(path);
    }
}
