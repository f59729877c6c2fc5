package thrumwright.yarn;

import java.util.Map;
import java.util.OptionalDouble;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Mass;

/**
 * How a yarn is sold, as it was typed: a length like {@code 85 m}, or a mass like {@code 100 g} or {@code 1/2 lb}.
 *
 * @param text as typed
 * @param mm of a length, more than 0; 0 for a mass
 * @param grams of a mass, more than 0; 0 for a length
 */
public record Skein(String text, double mm, double grams) {
    private static final double MOST_GRAMS = 100_000;

    /** @throws BadMeasure if it is neither a length nor a mass, or nothing */
    public static Skein parse(String typed) {
        String text = typed.strip();
        OptionalDouble mass = Mass.grams(text);
        Skein skein = mass.isPresent() ? new Skein(text, 0, mass.getAsDouble()) : new Skein(text, length(text), 0);
        if (!(skein.mm + skein.grams > 0 && skein.grams <= MOST_GRAMS)) {
            throw bad(text);
        }
        return skein;
    }

    private static double length(String text) {
        try {
            return Length.parse(text).mm();
        } catch (BadMeasure e) {
            throw (BadMeasure) bad(text).initCause(e);
        }
    }

    private static BadMeasure bad(String text) {
        return new BadMeasure("skein.not", Map.of("typed", text));
    }

    /**
     * Length of yarn in one, mm, more than 0.
     *
     * @param tex g/km, more than 0
     */
    public double length(double tex) {
        return grams > 0 ? grams / tex * 1e6 : mm;
    }
}
