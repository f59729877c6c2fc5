package thrumwright.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** A picture with its words. */
public interface Pictured {
    /** What stands below it. */
    String caption();

    /** The same for those who hear it. */
    String says();

    /**
     * Draws it; nothing goes outside the box, which is best half as wide again as high.
     *
     * @param font of numbers in it
     */
    void paint(Graphics2D g, Palette palette, Font font, Rectangle2D box);
}
