package thrumwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Rounds decimal numbers, and shows them without needless zeros. */
public final class Decimals {
    /** Looked up once for each locale: that takes longer than all the rest. */
    private static final Map<Locale, Boolean> COMMA = new ConcurrentHashMap<>();

    /** A decimal sign with digits after it, as in 1.5 and .5. */
    private static final Pattern SIGN = Pattern.compile("[.,](?=\\d)");

    private Decimals() {}

    /**
     * {@code value} with at most {@code places} decimals, halves rounded up, no trailing zeros and no grouping.
     *
     * @param value any finite number, in whatever unit
     */
    public static String plain(double value, int places, Locale locale) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        if (rounded.signum() == 0) {
            return "0";
        }
        // no DecimalFormat: to make one takes ten times as long as all of this, and labels are written at every step of
        // a drag
        String plain = rounded.stripTrailingZeros().toPlainString();
        return comma(locale) ? plain.replace('.', ',') : plain;
    }

    /** Whether a locale's decimal sign is a comma; digits are always those that {@link Numbers} reads. */
    private static boolean comma(Locale locale) {
        return !locale.equals(Locale.ROOT)
                && COMMA.computeIfAbsent(
                        locale,
                        wanted -> DecimalFormatSymbols.getInstance(wanted).getDecimalSeparator() == ',');
    }

    /**
     * A text that was typed, with the decimal sign of a place in its numbers, whether point or comma was typed.
     *
     * @param text with numbers that {@link Numbers} reads
     */
    static String local(String text, Locale locale) {
        return SIGN.matcher(text).replaceAll(comma(locale) ? "," : ".");
    }

    /**
     * The smallest multiple of {@code step} that isn't below {@code value}; a hair of rounding doesn't count.
     *
     * @param value any finite number, in the unit of the step
     * @param step more than 0
     */
    public static double roundedUp(double value, double step) {
        return Math.ceil(value / step - 1e-9) * step;
    }
}
