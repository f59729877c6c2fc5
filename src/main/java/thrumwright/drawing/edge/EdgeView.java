package thrumwright.drawing.edge;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.HandWay;
import thrumwright.drawing.Palette;
import thrumwright.drawing.PictureLabels;

/**
 * How warp ends are looked at.
 *
 * @param font of numbers; null for none
 * @param labels for what is seen from behind
 * @param slipped whether to show what beginners get wrong
 * @param stage of the working, from 0; {@link #WHOLE} for what comes of it
 */
public record EdgeView(Graphics2D g, Palette palette, Font font, PictureLabels labels, boolean slipped, int stage) {
    /** No stage. */
    public static final int WHOLE = -1;

    /** What comes of it, right or wrong. */
    public static EdgeView whole(Graphics2D g, Palette palette, Font font, PictureLabels labels, boolean slipped) {
        return new EdgeView(g, palette, font, labels, slipped, WHOLE);
    }

    boolean staged() {
        return stage != WHOLE;
    }

    HandWay hand(Rectangle2D box) {
        return HandWay.in(box, g, palette, font);
    }
}
