package thrumwright.measure;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Shows measures in a piece's units. Every argument is in millimetres or grams and must be finite.
 *
 * @param system the units to show in
 * @param locale whose decimal sign to use
 */
public record Shown(UnitSystem system, Locale locale) {
    private static final double GRAMS_PER_OUNCE = 28.349523125;
    private static final double HALF_A_SIXTEENTH = Unit.INCH.millimetres() / 32;
    private static final Map<String, Character> VULGAR = Numbers.VULGAR.entrySet().stream()
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getValue, Map.Entry::getKey));

    /** With the decimal sign that is usual where the program runs, whatever language its words are in. */
    public Shown(UnitSystem system) {
        this(system, Locale.getDefault(Locale.Category.FORMAT));
    }

    /** A height or a depth, mm: to the millimetre below 10 cm, or to the sixteenth of an inch, and less than that to the 64th. */
    public String height(double mm) {
        if (system == UnitSystem.INCHES) {
            return inches(mm, mm > 0 && mm < HALF_A_SIXTEENTH ? 64 : 16);
        }
        return mm < 10 ? decimals(mm, mm < 3 ? 1 : 0) + " mm" : decimals(mm / 10, 1) + " cm";
    }

    /**
     * A height to be read from afar, mm, any: its figures alone, all as tall as each other, in centimetres to the millimetre or
     * in inches to the sixteenth: {@code 8.7}, {@code 3 7/16}. The unit is {@link #unit()}.
     */
    public String figures(double mm) {
        if (system == UnitSystem.INCHES) {
            return Numbers.plain(mixed(Math.round(mm / Unit.INCH.millimetres() * 16), 16));
        }
        String shown = decimals(mm / 10, 1);
        String sign = decimals(0.5, 1).substring(1, 2);
        return shown.contains(sign) ? shown : shown + sign + "0";
    }

    /** The unit of {@link #figures}. */
    public String unit() {
        return system == UnitSystem.INCHES ? "in" : "cm";
    }

    /**
     * A length to cut, mm, 0 or more: in centimetres, of more than 3 m in metres, for nobody measures that in centimetres; or in inches,
     * however long. Long ones are shown to the whole centimetre or inch. Never shown shorter than it is, but for a hundredth of a
     * millimetre.
     */
    public String cut(double mm) {
        boolean exact = mm < system.longFrom();
        if (system == UnitSystem.INCHES) {
            double inches = mm / Unit.INCH.millimetres();
            return (exact ? mixed(up(inches * 8), 8) : String.valueOf(up(inches))) + " in";
        }
        if (mm > 3000) {
            return decimals(up(mm / 10) / 100.0, 2) + " m";
        }
        return (exact ? decimals(up(mm) / 10.0, 1) : String.valueOf(up(mm / 10))) + " cm";
    }

    private static long up(double value) {
        return (long) Math.ceil(value - 1e-2 / 25.4);
    }

    /** A total to buy, mm, 0 or more: metres, or yards. */
    public String total(double mm) {
        return system == UnitSystem.INCHES
                ? decimals(mm / Unit.YARD.millimetres(), 1) + " yd"
                : decimals(mm / 1000, 1) + " m";
    }

    /** A length, mm, 0 or more, that must not be rounded away: to a hundredth of a millimetre, or a thousandth of an inch. */
    public String fine(double mm) {
        return system == UnitSystem.INCHES
                ? decimals(mm / Unit.INCH.millimetres(), 3) + " in"
                : decimals(mm, 2) + " mm";
    }

    /** A mass, g, 0 or more, shown in grams or ounces. */
    public String mass(double grams) {
        if (system == UnitSystem.INCHES) {
            double ounces = grams / GRAMS_PER_OUNCE;
            int fine = ounces < 0.1 ? 2 : 1;
            return decimals(ounces, ounces < 10 ? fine : 0) + " oz";
        }
        return decimals(grams, grams < 10 ? 1 : 0) + " g";
    }

    /** Any finite number, without a unit, to the nearest half: {@code 3}, {@code 3½}, {@code ½}. */
    public String halves(double value) {
        return mixed(Math.round(value * 2), 2);
    }

    /** Any finite number, without a unit, with at most {@code places} decimals. */
    public String decimals(double value, int places) {
        return Decimals.plain(value, places, locale);
    }

    /** A measure as it was typed, but for the decimal sign; the document keeps the one that was typed. */
    public String typed(String text) {
        return Decimals.local(text, locale);
    }

    /** As {@link #typed(String)}, with the decimal sign that is usual where the program runs. */
    public static String here(String text) {
        return Decimals.local(text, Locale.getDefault(Locale.Category.FORMAT));
    }

    private String inches(double mm, int parts) {
        return mixed(Math.round(mm / Unit.INCH.millimetres() * parts), parts) + " in";
    }

    /** {@code parts} of {@code of} as a whole number and a real fraction. */
    static String mixed(long parts, int of) {
        if (parts < 0) {
            return "−" + mixed(-parts, of);
        }
        long whole = parts / of;
        int top = (int) (parts % of);
        int below = of;
        while (top != 0 && top % 2 == 0 && below % 2 == 0) {
            top /= 2;
            below /= 2;
        }
        if (top == 0) {
            return Long.toString(whole);
        }
        return (whole == 0 ? "" : Long.toString(whole)) + fraction(top, below);
    }

    private static String fraction(int top, int below) {
        Character vulgar = VULGAR.get(top + "/" + below);
        return vulgar != null ? vulgar.toString() : digits(top, Numbers.RAISED) + '⁄' + digits(below, Numbers.LOWERED);
    }

    private static String digits(int value, String alphabet) {
        return Integer.toString(value)
                .chars()
                .mapToObj(c -> String.valueOf(alphabet.charAt(c - '0')))
                .collect(Collectors.joining());
    }
}
