package thrumwright.measure;

import java.util.Optional;

/**
 * A measure as it mostly stands: a whole or decimal number, one sign and the symbol of a unit. It is read without taking apart
 * all else that a weaver may type; what is written otherwise is left to {@link Length} and {@link Sett}.
 *
 * @param number 0 or more
 */
record PlainMeasure(double number, Unit unit) {
    /** So many digits are a whole number without rounding. */
    private static final int MOST_DIGITS = 9;

    /** @param between what stands between number and unit */
    static Optional<PlainMeasure> of(String text, char between) {
        int sign = text.indexOf(between);
        Optional<Unit> unit = sign < 1 ? Optional.empty() : withSymbol(text.substring(sign + 1));
        if (unit.isEmpty() || !isNumber(text, sign)) {
            return Optional.empty();
        }
        return Optional.of(new PlainMeasure(Double.parseDouble(text.substring(0, sign)), unit.get()));
    }

    /** 0 or more. */
    double millimetres() {
        return number * unit.millimetres();
    }

    private static Optional<Unit> withSymbol(String symbol) {
        for (Unit unit : Unit.values()) {
            if (unit.symbol().equals(symbol)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** Digits with at most one point among them, and no sign that any other alphabet has for a digit. */
    private static boolean isNumber(String text, int end) {
        int point = text.indexOf('.');
        boolean one = point < 0 || point > 0 && point < end - 1;
        for (int i = 0; i < end && one; i++) {
            one = i == point || text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        return one && end <= MOST_DIGITS;
    }
}
