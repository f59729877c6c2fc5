package thrumwright.measure;

import java.util.Optional;

/**
 * A length as it mostly stands: a whole or decimal number, one space and the symbol of a unit. It is read without taking apart
 * all else that a weaver may type; what is written otherwise is left to {@link Length}.
 *
 * @param millimetres 0 or more
 */
record PlainLength(double millimetres) {
    /** So many digits are a whole number without rounding. */
    private static final int MOST_DIGITS = 9;

    static Optional<PlainLength> of(String text) {
        int space = text.indexOf(' ');
        Optional<Unit> unit = space < 1 ? Optional.empty() : withSymbol(text.substring(space + 1));
        if (unit.isEmpty() || !isNumber(text, space)) {
            return Optional.empty();
        }
        double number = Double.parseDouble(text.substring(0, space));
        return Optional.of(new PlainLength(number * unit.get().millimetres()));
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
