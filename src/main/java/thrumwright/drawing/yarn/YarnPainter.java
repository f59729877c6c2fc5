package thrumwright.drawing.yarn;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/** Draws a block's yarn, stretch by stretch: what lies towards the eye, or what lies beyond the warp. */
record YarnPainter(Palette palette, Face face) {
    /** Stretches reach at most so far beyond their middle line, in diameters. */
    static final double SPARE = 2;

    /** How much darker yarn is behind the warp. */
    private static final double SHADE = 0.3;

    /** @param near whether to draw the yarn towards the eye */
    void draw(Graphics2D g, View view, BlockPicture picture, boolean near) {
        Rectangle2D visible = g.getClipBounds();
        Detail detail = Detail.of(view.length(picture.setting().relaxed()) * Detail.device(g));
        if (!near) {
            behind(g, view, picture).drawTogether(within(view, face.far(picture, detail), visible));
            return;
        }
        List<Stretch> front = within(view, face.near(picture, detail), visible);
        if (picture.overlapping()) {
            pen(g, view, picture.yarn()).drawInOrder(front);
        } else {
            pen(g, view, picture.yarn()).drawTogether(front);
        }
    }

    YarnPen pen(Graphics2D g, View view, DyedYarn yarn) {
        return new YarnPen(g, view, yarn.colour(palette), yarn.plies(), face).blending(yarn.strands(palette));
    }

    YarnPen behind(Graphics2D g, View view, BlockPicture picture) {
        DyedYarn yarn = picture.yarn();
        List<Color> strands = yarn.strands(palette).stream().map(this::shaded).toList();
        return YarnPen.inTheShade(g, view, shaded(yarn.colour(palette)), yarn.plies(), face)
                .blending(strands);
    }

    private Color shaded(Color yarn) {
        return Palette.mixed(Palette.mixed(yarn, Color.BLACK, SHADE), palette.paper(), 0.08);
    }

    /** The stretches that can be seen; all where that is null. */
    static List<Stretch> within(View view, List<Stretch> stretches, Rectangle2D visible) {
        if (visible == null || stretches.isEmpty()) {
            return stretches;
        }
        double spare = SPARE * stretches.get(0).thickest();
        double left = view.clothX(visible.getMinX()) - spare;
        double right = view.clothX(visible.getMaxX()) + spare;
        double low = view.clothY(visible.getMaxY()) - spare;
        double high = view.clothY(visible.getMinY()) + spare;
        return stretches.stream()
                .filter(stretch -> stretch.highX() >= left && stretch.lowX() <= right)
                .filter(stretch -> stretch.highY() >= low && stretch.lowY() <= high)
                .toList();
    }
}
