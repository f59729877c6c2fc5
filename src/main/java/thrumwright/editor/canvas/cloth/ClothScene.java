package thrumwright.editor.canvas.cloth;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import thrumwright.drawing.Palette;
import thrumwright.drawing.edge.HangingGroup;
import thrumwright.drawing.piece.LoomPainter;
import thrumwright.drawing.piece.PiecePainter;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.editor.canvas.seen.Axes;
import thrumwright.editor.canvas.seen.Axis;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;

/**
 * A cloth as it is shown on a screen, wherever it lies there. Places on it are device pixels from the point where the
 * first warp end meets the start's lowest line, with y down.
 *
 * @param axes what is shown of it
 * @param density device pixels per canvas pixel, more than 0
 */
public record ClothScene(PiecePicture picture, Palette palette, Axes axes, double density) {
    /** How thick bars are drawn, canvas pixels. */
    private static final double BAR = 8;

    /** How far an edge of what is left out reaches beyond the cloth, canvas pixels. */
    private static final double BEYOND = 2;

    /** Whether it is the same cloth in the same colours, perhaps in another size. */
    boolean sameCloth(ClothScene other) {
        return picture == other.picture && (palette == other.palette || palette.equals(other.palette));
    }

    boolean same(ClothScene other) {
        return sameCloth(other) && density == other.density && axes.same(other.axes);
    }

    /** Whether either shows its cloth in the same size and as wide, though perhaps not as high. */
    boolean sameSize(ClothScene other) {
        return axes.across().same(other.axes.across()) && density == other.density;
    }

    /** Device pixels per mm. */
    double dots() {
        return axes.scale() * density;
    }

    /**
     * Paints a part of it. May be called on any thread.
     *
     * @param screen what the picture is for; null for none
     */
    BufferedImage paint(Rectangle part, GraphicsConfiguration screen) {
        BufferedImage image = screen == null
                ? new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB)
                : screen.createCompatibleImage(part.width, part.height);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(palette.paper());
            g.fillRect(0, 0, part.width, part.height);
            g.translate(-part.x, -part.y);
            g.clip(part);
            g.scale(density, density);
            paint(g);
        } finally {
            g.dispose();
        }
        return image;
    }

    /**
     * Paints as much of it as the clip lets through.
     *
     * @param g in canvas pixels from the cloth's corner
     */
    public void paint(Graphics2D g) {
        for (Axes.Panel panel : axes.panels()) {
            if (g.hitClip(
                    (int) Math.floor(Math.max(panel.box().getX(), -1e8)),
                    (int) Math.floor(Math.max(panel.box().getY(), -1e8)),
                    (int) Math.ceil(Math.min(panel.box().getWidth(), 2e8)) + 1,
                    (int) Math.ceil(Math.min(panel.box().getHeight(), 2e8)) + 1)) {
                Graphics2D own = (Graphics2D) g.create();
                own.clip(panel.box());
                paint(own, panel);
                own.dispose();
            }
        }
        breaks(g);
    }

    private void paint(Graphics2D g, Axes.Panel panel) {
        double thick = BAR / axes.scale();
        ClothPainter.Upright bare =
                new ClothPainter.Upright(picture.lowerBar() - thick / 2, picture.upperBar() + thick / 2);
        new PiecePainter(g, palette, false).piece(panel.view(), picture, bare);
        new LoomPainter(g, panel.view(), palette).bars(picture, thick);
        for (Place place : Place.values()) {
            EndPlan end = picture.plan().end(place);
            end.finish().filter(finish -> end.loops().isEmpty()).ifPresent(finish -> hanging(g, panel, end, finish));
        }
    }

    private void hanging(Graphics2D g, Axes.Panel panel, EndPlan end, Finish finish) {
        Color warp = palette.yarn(picture.plan().piece().warpYarn().colour());
        Color wrapping = end.block(finish.block().id())
                .flatMap(BlockPlan::yarn)
                .map(yarn -> palette.yarn(yarn.colour()))
                .orElse(warp);
        new HangingGroup(g, palette, panel.view().raised(picture.base(end.place())), picture.ground(), warp, wrapping)
                .draw(finish, end.edge(), end.place() == Place.START ? -1 : 1);
    }

    private void breaks(Graphics2D g) {
        BreakPainter painter = new BreakPainter(g, palette);
        Axis across = axes.across();
        double left = across.pixel(-picture.reach().outermost()) - BAR / 2 - BEYOND;
        double right = across.pixel(picture.span() + picture.reach().outermost()) + BAR / 2 + BEYOND;
        axes.up().gaps().forEach(gap -> painter.level(gap, left, right));
        double top = axes.up().pixel(picture.upperBar()) - BAR - BEYOND;
        double bottom = axes.up().pixel(picture.lowerBar()) + BAR + BEYOND;
        across.gaps().forEach(gap -> painter.upright(gap, top, bottom));
    }
}
