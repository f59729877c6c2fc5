package thrumwright.editor.canvas.cloth;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.seen.Axes;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;

/** A cloth in so few strokes that it can be drawn at once: each block in its colour, at its place. */
record Sketch(ClothScene scene) {
    /** How much of the paper shows between warp ends. */
    private static final double BARE = 0.6;

    /** @param g in device pixels from the cloth's corner */
    void draw(Graphics2D g, Rectangle part) {
        Palette palette = scene.palette();
        g.setColor(palette.paper());
        g.fillRect(part.x, part.y, part.width, part.height);
        scene.axes().panels().forEach(panel -> panel(g, part, panel));
    }

    private void panel(Graphics2D g, Rectangle part, Axes.Panel panel) {
        Rectangle2D shown = panel.box().createIntersection(canvasPart(part));
        if (shown.isEmpty()) {
            return;
        }
        PiecePicture picture = scene.picture();
        Color warp = scene.palette().yarn(picture.plan().piece().warpYarn().colour());
        band(
                g,
                shown,
                panel,
                picture.lowerBar(),
                picture.upperBar(),
                Palette.mixed(warp, scene.palette().paper(), BARE));
        for (Place place : Place.values()) {
            double line = picture.base(place)
                    + (place == Place.START ? picture.plan().start().height() : 0);
            double high = picture.stripe(place).height() * (place == Place.START ? 1 : -1);
            band(
                    g,
                    shown,
                    panel,
                    line,
                    line + high,
                    scene.palette().yarn(picture.plan().piece().stripe(place).colour()));
            blocks(g, shown, panel, place, picture.plan().end(place).blocks());
        }
    }

    private void blocks(Graphics2D g, Rectangle2D shown, Axes.Panel panel, Place place, List<BlockPlan> blocks) {
        double base = scene.picture().base(place);
        for (BlockPlan block : blocks) {
            block.yarn()
                    .ifPresent(yarn -> band(
                            g,
                            shown,
                            panel,
                            base + block.bottom(),
                            base + block.top(),
                            scene.palette().yarn(yarn.colour())));
        }
    }

    /** @param one height above the start's lowest line, mm, and so the other */
    private void band(Graphics2D g, Rectangle2D shown, Axes.Panel panel, double one, double other, Color colour) {
        double left = panel.view().x(0);
        double wide = panel.view().x(scene.picture().span()) - left;
        double top = panel.view().y(Math.max(one, other));
        double high = panel.view().y(Math.min(one, other)) - top;
        Rectangle2D band = shown.createIntersection(new Rectangle2D.Double(left, top, wide, high));
        if (!band.isEmpty()) {
            g.setColor(colour);
            // whole device pixels: an exact edge would take many times as long
            int x = (int) Math.round(band.getMinX() * scene.density());
            int y = (int) Math.round(band.getMinY() * scene.density());
            g.fillRect(
                    x,
                    y,
                    (int) Math.round(band.getMaxX() * scene.density()) - x,
                    (int) Math.round(band.getMaxY() * scene.density()) - y);
        }
    }

    private Rectangle2D canvasPart(Rectangle part) {
        double density = scene.density();
        return new Rectangle2D.Double(part.x / density, part.y / density, part.width / density, part.height / density);
    }
}
