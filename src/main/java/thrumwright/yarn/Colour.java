package thrumwright.yarn;

import java.util.Locale;
import java.util.Map;
import thrumwright.measure.BadMeasure;

/**
 * A yarn's colour.
 *
 * @param rgb red, green and blue, eight bits each
 */
public record Colour(int rgb) {
    public Colour {
        if ((rgb & 0xff000000) != 0) {
            throw new IllegalArgumentException("a colour is red, green and blue of eight bits each");
        }
    }

    /**
     * Reads {@code #c47a2c}.
     *
     * @throws BadMeasure if it is no such colour
     */
    public static Colour parse(String text) {
        if (!text.matches("#[0-9a-fA-F]{6}")) {
            throw new BadMeasure("colour.not", Map.of("typed", text));
        }
        return new Colour(Integer.parseInt(text.substring(1), 16));
    }

    public String text() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }
}
