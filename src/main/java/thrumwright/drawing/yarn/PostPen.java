package thrumwright.drawing.yarn;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import thrumwright.block.Posts;
import thrumwright.block.Setting;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/** Draws a loom's posts as round uprights, lightly. */
public record PostPen(Graphics2D g, View view, Palette palette) {
    /** Where light falls on it, as a share of its width from the left. */
    private static final double RIDGE = 0.36;

    /** Strips of one shade from the rims to the ridge, at most; fewer where each would be finer than so many device units. */
    private static final int MOST_STRIPS = 14;

    private static final double FINEST = 0.7;

    /** How dark the rims are and how light the ridge is, as shares of the way to ink and to light. */
    private static final double RIM = 0.42;

    private static final double LIGHT = 0.62;

    /** Both posts from one height to another: mm, either sign. */
    public void draw(Setting setting, Posts posts, double fromY, double toY) {
        double away = posts.gap() + setting.warp() / 2;
        post(-away - posts.diameter(), posts.diameter(), fromY, toY);
        post(setting.span() + away, posts.diameter(), fromY, toY);
    }

    private void post(double left, double diameter, double fromY, double toY) {
        double width = view.length(diameter);
        double x = view.x(left);
        int strips = (int) Math.max(4, Math.min(MOST_STRIPS, width * Detail.device(g) * RIDGE / FINEST));
        for (int i = 0; i < strips; i++) {
            double in = 1 - Math.cos(Math.PI / 2 * i / strips);
            double low = in * RIDGE;
            double high = 1 - in * (1 - RIDGE);
            g.setColor(shade(Math.sin(Math.PI / 2 * (i + 0.5) / strips)));
            g.fill(upright(x + width * low, x + width * high, fromY, toY, width * low * 0.6));
        }
        g.setColor(Palette.mixed(palette.post(), palette.ink(), 0.6));
        g.setStroke(new BasicStroke((float) Math.max(0.4, Math.min(1, width * 0.04))));
        g.draw(upright(x, x + width, fromY, toY, 0));
    }

    /** @param facing how far a place faces the light: 0 at the rims, 1 at the ridge */
    private Color shade(double facing) {
        double light = facing * (RIM + LIGHT) - RIM;
        return light < 0
                ? Palette.mixed(palette.post(), darker(), -light)
                : Palette.mixed(palette.post(), lighter(), light);
    }

    private Color darker() {
        return Palette.lightness(palette.paper()) > 0.5 ? palette.ink() : palette.paper();
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
