package thrumwright.editor.look;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import javax.swing.JComponent;

/**
 * Fills rectangles whose edges need no smoothing. While edges are smoothed, even a large upright rectangle is painted tile
 * by tile through a mask, which takes many times as long.
 */
public final class Ground {
    private Ground() {}

    /** All of a component. */
    public static void fill(Graphics2D g, JComponent component, Color colour) {
        fill(g, new Rectangle(component.getWidth(), component.getHeight()), colour);
    }

    public static void fill(Graphics2D g, Rectangle2D area, Color colour) {
        Object smoothing = g.getRenderingHint(RenderingHints.KEY_ANTIALIASING);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        g.setColor(colour);
        g.fill(area);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, smoothing);
    }
}
