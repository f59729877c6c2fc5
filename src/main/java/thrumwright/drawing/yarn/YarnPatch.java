package thrumwright.drawing.yarn;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Palette;

/** A patch in a yarn's colour with an edge in ink, where there is no room for the yarn's path. */
public final class YarnPatch {
    private static final float EDGE = 0.5f;

    private YarnPatch() {}

    public static void paint(Graphics2D g, Palette palette, Color yarn, Rectangle2D box) {
        g.setColor(yarn);
        g.fill(box);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(EDGE));
        g.draw(box);
    }
}
