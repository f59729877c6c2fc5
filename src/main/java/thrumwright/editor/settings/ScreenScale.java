package thrumwright.editor.settings;

import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.util.Optional;

/**
 * How large a millimetre is on each screen. Systems rarely know it; the weaver can measure it, and every screen is
 * remembered by itself.
 */
public record ScreenScale(Settings settings) {
    /** Pixels per mm where nobody has measured: 96 to the inch, the reference pixel of CSS Values Level 3. */
    static final double USUAL = 96 / 25.4;

    private static final double LEAST = 1;
    private static final double MOST = 50;

    /** Pixels of a window per mm on a screen, more than 0. */
    public double of(GraphicsConfiguration screen) {
        return settings.get(key(screen))
                .flatMap(ScreenScale::number)
                .map(dots -> dots / density(screen))
                .orElse(USUAL);
    }

    /** @param pixels of a window per mm, more than 0 */
    public void measured(GraphicsConfiguration screen, double pixels) {
        settings.put(key(screen), Double.toString(pixels * density(screen)));
    }

    /** A screen by its name and how many dots it has, since another one may be plugged in at the same place. */
    private static String key(GraphicsConfiguration screen) {
        Rectangle bounds = screen.getBounds();
        double density = density(screen);
        String name = screen.getDevice().getIDstring().replaceAll("[^A-Za-z0-9]+", "-");
        return "screen." + name + "." + Math.round(bounds.width * density) + "x" + Math.round(bounds.height * density);
    }

    private static double density(GraphicsConfiguration screen) {
        return screen.getDefaultTransform().getScaleX();
    }

    /** Device pixels per mm; nothing if the settings were changed to what can't be. */
    private static Optional<Double> number(String text) {
        try {
            double number = Double.parseDouble(text);
            return number >= LEAST && number <= MOST ? Optional.of(number) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
