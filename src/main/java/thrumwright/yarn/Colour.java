package thrumwright.yarn;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import thrumwright.measure.BadMeasure;

/**
 * A yarn's colour.
 *
 * @param rgb red, green and blue, eight bits each
 */
public record Colour(int rgb) {
    private static final Pattern WRITTEN = Pattern.compile("#[0-9a-fA-F]{6}");

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
        if (!WRITTEN.matcher(text).matches()) {
            throw new BadMeasure("colour.not", Map.of("typed", text));
        }
        return new Colour(Integer.parseInt(text.substring(1), 16));
    }

    /**
     * Several as one from afar: the mean of their light, not of their numbers.
     *
     * @param weights how much there is of each, more than 0 in all
     */
    static Colour blended(Map<Colour, Double> weights) {
        double all = weights.values().stream().mapToDouble(Double::doubleValue).sum();
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int by = shift;
            double light = weights.entrySet().stream()
                    .mapToDouble(each -> light(each.getKey().rgb >> by & 0xff) * each.getValue())
                    .sum();
            rgb |= (int) Math.round(255 * encoded(light / all)) << shift;
        }
        return new Colour(rgb);
    }

    /** IEC 61966-2-1 (sRGB). */
    private static double light(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static double encoded(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }

    public String text() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }

    /** Said here, since what a record has by itself is put together when it is first asked, which every start would wait for. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Colour colour && rgb == colour.rgb;
    }

    @Override
    public int hashCode() {
        return rgb;
    }
}
