package thrumwright.measure;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads masses as they are typed: {@code 100 g}, {@code 1.5 kg}, {@code 4 oz}, {@code 1/2 lb}. */
public final class Mass {
    private static final Pattern FORM = Pattern.compile("(.+?)\\s*(g|kg|oz|lb)", Pattern.CASE_INSENSITIVE);
    private static final Map<String, Double> GRAMS =
            Map.of("g", 1.0, "kg", 1000.0, "oz", 28.349523125, "lb", 453.59237);

    private Mass() {}

    /** In grams, any; empty if it is no mass. */
    public static OptionalDouble grams(String typed) {
        Matcher mass = FORM.matcher(Numbers.spaced(typed));
        double number = mass.matches() ? Numbers.value(mass.group(1)) : Double.NaN;
        return Double.isNaN(number)
                ? OptionalDouble.empty()
                : OptionalDouble.of(number * GRAMS.get(mass.group(2).toLowerCase(Locale.ROOT)));
    }
}
