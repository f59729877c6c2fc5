package thrumwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Rounds decimal numbers, and shows them without needless zeros. */
public final class Decimals {
    /** Looked up once for each locale: that takes longer than all the rest. */
    private static final Map<Locale, DecimalFormatSymbols> SYMBOLS = new ConcurrentHashMap<>();

    private Decimals() {}

    /**
     * {@code value} with at most {@code places} decimals, halves rounded up, no trailing zeros and no grouping.
     *
     * @param value any finite number
     */
    public static String plain(double value, int places, Locale locale) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        DecimalFormat format = new DecimalFormat("0", SYMBOLS.computeIfAbsent(locale, Decimals::symbols));
        format.setMaximumFractionDigits(places);
        return format.format(rounded.signum() == 0 ? BigDecimal.ZERO : rounded);
    }

    /** A locale's decimal sign where it is a comma, else a point; digits are those that {@link Numbers} reads. */
    private static DecimalFormatSymbols symbols(Locale locale) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        boolean comma = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',';
        symbols.setDecimalSeparator(comma ? ',' : '.');
        return symbols;
    }

    /**
     * The smallest multiple of {@code step} that isn't below {@code value}; a hair of rounding doesn't count.
     *
     * @param step more than 0
     */
    public static double roundedUp(double value, double step) {
        return Math.ceil(value / step - 1e-9) * step;
    }
}
