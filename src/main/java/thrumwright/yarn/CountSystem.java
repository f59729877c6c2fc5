package thrumwright.yarn;

/**
 * A way of numbering yarns by length and mass. The factors to tex are those of ASTM D2260.
 */
public enum CountSystem {
    COTTON("Ne", 590.541, true, true),
    WORSTED("worsted", 885.812, true, true),
    LINEN_LEA("lea", 1653.52, true, true),
    WOOLLEN_RUN("run", 310.034, true, true),
    METRIC("Nm", 1000, true, true),
    TEX("tex", 1, false, true),
    DENIER("den", 1.0 / 9, false, true),
    YARDS_PER_POUND("yd/lb", 496_055, true, false),
    METRES_PER_100_GRAMS("m/100 g", 100_000, true, false);

    private final String symbol;
    private final double factor;
    private final boolean indirect;
    private final boolean ofTheSingle;

    CountSystem(String symbol, double factor, boolean indirect, boolean ofTheSingle) {
        this.symbol = symbol;
        this.factor = factor;
        this.indirect = indirect;
        this.ofTheSingle = ofTheSingle;
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
