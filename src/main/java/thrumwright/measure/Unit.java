package thrumwright.measure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit of length that a weaver may type.
 *
 * <p>The inch is 25.4 mm exactly (international yard and pound agreement, 1959).
 */
public enum Unit {
    MILLIMETRE("mm", 1, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    CENTIMETRE("cm", 10, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    METRE("m", 1000, "m", "metre", "metres", "meter", "meters"),
    INCH("in", 25.4, "in", "inch", "inches", "\"", "″", "”", "''"),
    FOOT("ft", 304.8, "ft", "foot", "feet", "'", "′", "’"),
    YARD("yd", 914.4, "yd", "yds", "yard", "yards");

    private final String symbol;
    private final double millimetres;
    private final List<String> spellings;

    Unit(String symbol, double millimetres, String... spellings) {
        this.symbol = symbol;
        this.millimetres = millimetres;
        this.spellings = List.of(spellings);
    }

    /** The short sign that follows a number: {@code mm}, {@code cm}, {@code in} … */
    public String symbol() {
        return symbol;
    }

    /** How long one of this unit is, mm, 1 to 1000. */
    public double millimetres() {
        return millimetres;
    }

    /** The unit that is written so, upper or lower case; empty if none is. */
    public static Optional<Unit> spelt(String text) {
        String wanted = text.toLowerCase(Locale.ROOT);
        for (Unit unit : values()) {
            if (unit.spellings.contains(wanted)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
