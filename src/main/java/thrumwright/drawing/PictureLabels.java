package thrumwright.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Locale;
import thrumwright.measure.Phrases;

/**
 * The few words within drawings.
 *
 * @param front of the side of a cloth that is seen when it hangs
 * @param back of the other
 */
public record PictureLabels(String front, String back) {
    /** In the best language for a locale. */
    public static PictureLabels of(Locale locale) {
        Phrases phrases = Phrases.of("thrumwright.sheet.steps", locale);
        return new PictureLabels(phrases.say("label.front"), phrases.say("label.back"));
    }

    /** In the language of where the program runs. */
    public static PictureLabels here() {
        return of(Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** How wide a label is, page units, 0 or more. */
    public static double width(String label, Font font) {
        return UprightText.width(label, font);
    }

    /** A label with its middle at a place, page units, any, on a little paper; none without a font. */
    public static void draw(Graphics2D g, Palette palette, Font font, String label, double x, double y) {
        if (font != null) {
            double high = font.getSize2D();
            UprightText.draw(g, font, label, x, y, wide -> {
                g.setColor(palette.paper());
                g.fill(new RoundRectangle2D.Double(
                        -wide / 2 - 2, -high * 0.6, wide + 4, high * 1.2, high * 0.5, high * 0.5));
                g.setColor(palette.ink());
            });
        }
    }
}
