package thrumwright.drawing.edge;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Setting;
import thrumwright.block.WarpLoops;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Face;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** A closed edge, a few warp ends wide: the cloth, the loops below it, and what they lie round. */
record LoopsPainter(EdgeView eye) {
    private static final int ENDS = 7;
    /** Share of the box above the edge. */
    private static final double CLOTH = 0.42;

    void paint(Rectangle2D box, Plan plan, EndPlan end, WarpLoops loops) {
        // odd or even as the whole warp, so that its yarn ends where it does
        int all = plan.piece().warp().ends();
        int ends = Math.min(all, ENDS + (ENDS + all) % 2);
        double pitch = box.getWidth() * 0.76 / (ends - 1);
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        double left = box.getMinX() + box.getWidth() * 0.12;
        Setting whole = plan.piece().setting(plan.piece().warpYarn());
        double share = loops.thick().mm() / whole.spacing();
        double room = box.getMaxY() - edge;
        double thick = Math.max(0.1 * room, Math.min(0.38 * room, share * pitch));
        double warp = Math.min(pitch * 0.25, room * 0.1);
        Setting few = new Setting(ends, pitch, warp, warp, warp, Optional.empty());
        Graphics2D g = eye.g();
        Palette palette = eye.palette();
        cloth(new EdgeCloth(plan, end, ends, pitch, edge - box.getMinY()), new View(1, left, edge));
        new LoopPen(g, palette, new View(1, left, edge), few, plan.piece().warpYarn(), Face.FRONT, -1)
                .draw(end.place(), loops.round(), thick);
        if (eye.staged()) {
            way(box, edge, left + (eye.stage() == 0 ? -0.5 : Math.floor(ends / 2.0) + 0.5) * pitch);
        }
    }

    /** Up from where the warp begins, or down on the first picks. */
    private void way(Rectangle2D box, double edge, double x) {
        double high = edge - box.getMinY();
        boolean up = eye.stage() == 0;
        double from = edge - (up ? 0.1 : 0.72) * high;
        eye.hand(box).straight(x, from, x, edge - (up ? 0.7 : 0.12) * high, eye.stage() + 1);
    }

    /** At the start the warp is bare until the first picks; at the top the cloth reaches it. */
    private void cloth(EdgeCloth cloth, View at) {
        boolean bare = eye.staged() ? eye.stage() == 0 : cloth.end().place() == Place.START;
        List<ClothPainter.PlacedBlock> woven = cloth.blocks();
        new EdgePen(eye.g(), eye.palette()).cloth(cloth, bare ? List.of() : woven, at, Face.FRONT);
    }
}
