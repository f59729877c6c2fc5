package thrumwright.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.util.function.DoubleConsumer;

/** Text with its middle at a place, upright even on a canvas that is turned over. */
final class UprightText {
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private UprightText() {}

    /** In the font's units, 0 or more. */
    static double width(String text, Font font) {
        return font.getStringBounds(text, EXACT).getWidth();
    }

    /** @param ground paints what lies under a text of that width, about its middle at 0, 0, and sets the text's colour */
    static void draw(Graphics2D g, Font font, String text, double x, double y, DoubleConsumer ground) {
        AffineTransform kept = g.getTransform();
        g.translate(x, y);
        if (kept.getDeterminant() < 0) {
            g.scale(1, -1);
        }
        double wide = width(text, font);
        ground.accept(wide);
        g.setFont(font);
        g.drawString(text, (float) (-wide / 2), (float) (0.33 * font.getSize2D()));
        g.setTransform(kept);
    }
}
