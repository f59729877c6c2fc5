package thrumwright.yarn;

import java.util.List;
import thrumwright.measure.UnitSystem;

/**
 * A way of numbering yarns by length and mass. The factors to tex are those of ASTM D2260: the number is that of hanks of 840
 * yards (cotton), 560 yards (worsted), 300 yards (linen lea) or 1600 yards (woollen run) in a pound, of kilometres in a
 * kilogram (metric), or of grams in 1 km (tex) or 9 km (denier). J. T. Taylor, <i>Cotton Weaving and Designing</i>, has the
 * hanks of cotton and linen alike.
 */
public enum CountSystem {
    COTTON("Ne", 590.541, true, true, "NeC", "cotton"),
    WORSTED("worsted", 885.812, true, true, "NeK", "NeW"),
    LINEN_LEA("lea", 1653.52, true, true, "NeL", "linen"),
    WOOLLEN_RUN("run", 310.034, true, true),
    METRIC("Nm", 1000, true, true, "metric"),
    TEX("tex", 1, false, true),
    DENIER("den", 1.0 / 9, false, true),
    YARDS_PER_POUND("yd/lb", 496_055, true, false, "ypp"),
    METRES_PER_100_GRAMS("m/100 g", 100_000, true, false);

    private final String symbol;
    private final double factor;
    private final boolean indirect;
    private final boolean ofTheSingle;

    private final List<String> others;

    CountSystem(String symbol, double factor, boolean indirect, boolean ofTheSingle, String... others) {
        this.others = List.of(others);
        this.symbol = symbol;
        this.factor = factor;
        this.indirect = indirect;
        this.ofTheSingle = ofTheSingle;
    }

    /**
     * The one by which a yarn is sold where nothing else is said: cotton and linen by their own hanks, silk by metres; wool by
     * metres too, but by worsted hanks where inches are used (common practice, no source).
     */
    public static CountSystem usual(Fibre fibre, UnitSystem units) {
        return switch (fibre) {
            case COTTON -> COTTON;
            case LINEN -> LINEN_LEA;
            case SILK -> METRIC;
            case WOOL -> units == UnitSystem.INCHES ? WORSTED : METRIC;
        };
    }

    /** Whether it is written so, upper or lower case. */
    boolean isSpelt(String text) {
        String plain = text.replace(" ", "");
        return plain.equalsIgnoreCase(symbol.replace(" ", ""))
                || others.stream().anyMatch(plain::equalsIgnoreCase);
    }

    /** The sign that is written behind the number. */
    public String symbol() {
        return symbol;
    }

    /** Whether the number is that of one single, as in 12/6, and not of the whole yarn. */
    public boolean ofTheSingle() {
        return ofTheSingle;
    }

    /**
     * Mass per length, g/km, above 0.
     *
     * @param number more than 0
     */
    public double tex(double number) {
        return indirect ? factor / number : factor * number;
    }
}
