package thrumwright.drawing.yarn;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import thrumwright.block.Posts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/** Draws a block as a plain cover in its yarn's colour, where single yarns are finer than anybody could see. */
record CoverPainter(Graphics2D g, Palette palette) {
    /**
     * A crossing of yarn and warp on less than this, square units, can't be told from its neighbour: on paper 0.3 mm each way, one
     * minute of arc at a metre, which is what an eye resolves (common practice, no source); on a screen less than a pixel.
     */
    private static final double LEAST_CROSSING = 0.75;

    /** How much darker yarn is where light and shade of its stitches run together. */
    private static final double SHADE = 0.12;

    /** Nothing that is there is lower than that, page units. */
    private static final double HAIR = 0.3;

    /** @param unit how many device units of the picture are one that can be seen, 1 or more where it is magnified later */
    static boolean tooFine(View view, BlockPicture picture, double unit) {
        double across = view.length(picture.setting().spacing()) * unit;
        double up = view.length(Math.max(picture.rowHeight(), Math.abs(picture.lap()))) * unit;
        return across * up < LEAST_CROSSING;
    }

    /** Over the warp; behind it nothing is seen of it then, but for what goes to the posts. */
    void draw(View view, BlockPicture picture, boolean near) {
        double beside = picture.toPosts().map(CoverPainter::reach).orElse(0.0);
        if (!near && beside == 0) {
            return;
        }
        double out = picture.setting().spacing() / 2 + beside;
        double left = view.x(-out);
        double top = view.y(picture.height());
        g.setColor(Palette.mixed(picture.yarn().colour(palette), Color.BLACK, SHADE));
        g.fill(new Rectangle2D.Double(
                left, top, view.x(picture.setting().span() + out) - left, Math.max(HAIR, view.y(0) - top)));
    }

    private static double reach(Posts posts) {
        return posts.gap() + posts.diameter();
    }
}
