package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import thrumwright.block.Posts;
import thrumwright.block.Setting;

/** Draws a loom's posts as round uprights, lightly. */
final class PostPen {
    /** Strips from the rim to the ridge: where each begins and ends across the post, and how light it is. */
    private static final double[][] STRIPS = {
        {0.05, 0.95, 0.12}, {0.12, 0.80, 0.28}, {0.20, 0.62, 0.42}, {0.28, 0.46, 0.58}
    };

    private final Graphics2D g;
    private final View view;
    private final Palette palette;

    PostPen(Graphics2D g, View view, Palette palette) {
        this.g = g;
        this.view = view;
        this.palette = palette;
    }

    /** Both posts from one height to another. */
    void draw(Setting setting, Posts posts, double fromY, double toY) {
        double away = posts.gap() + setting.warp() / 2;
        post(-away - posts.diameter(), posts.diameter(), fromY, toY);
        post(setting.span() + away, posts.diameter(), fromY, toY);
    }

    private void post(double left, double diameter, double fromY, double toY) {
        double width = view.length(diameter);
        double x = view.x(left);
        RoundRectangle2D whole = upright(x, x + width, fromY, toY, 0);
        g.setColor(palette.post());
        g.fill(whole);
        for (double[] strip : STRIPS) {
            g.setColor(Palette.mixed(palette.post(), lighter(), strip[2]));
            g.fill(upright(x + width * strip[0], x + width * strip[1], fromY, toY, width * strip[0] * 0.6));
        }
        g.setColor(Palette.mixed(palette.post(), palette.ink(), 0.3));
        g.setStroke(new BasicStroke((float) Math.max(0.3, Math.min(0.8, width * 0.03))));
        g.draw(whole);
    }

    private Color lighter() {
        return Palette.lightness(palette.paper()) > 0.5
                ? palette.paper()
                : Palette.mixed(palette.post(), palette.ink(), 0.5);
    }

    private RoundRectangle2D upright(double left, double right, double fromY, double toY, double inset) {
        double round = Math.min(right - left, (view.y(fromY) - view.y(toY)) / 2) * 0.5;
        return new RoundRectangle2D.Double(
                left, view.y(toY) + inset, right - left, view.y(fromY) - view.y(toY) - 2 * inset, round, round);
    }
}
