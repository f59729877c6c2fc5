package thrumwright.yarn;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;

/** Reads a thickness in whichever way the weaver knows it. */
final class ThicknessText {
    private static final String NUMBER = "(\\d{1,7}(?:[.,]\\d{1,6})?)";
    private static final Pattern WRAPS =
            Pattern.compile(NUMBER + "\\s*wraps?\\s*(?:in|per|/)\\s*(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern WRAPS_PER_INCH = Pattern.compile(NUMBER + "\\s*wpi", Pattern.CASE_INSENSITIVE);
    private static final Pattern NUMBER_ALONE = Pattern.compile(NUMBER);
    private static final Pattern COUNT_ALONE = Pattern.compile("(\\d{1,3})\\s*/\\s*(\\d{1,2})s?");
    private static final Pattern COUNT = Pattern.compile(NUMBER + "(?:\\s*/\\s*(\\d{1,2}))?\\s*([\\p{L}].*)");

    private ThicknessText() {}

    static Thickness parse(String typed) {
        String text = typed.strip();
        Matcher perInch = WRAPS_PER_INCH.matcher(text);
        if (perInch.matches()) {
            return new Thickness.Wraps(number(perInch.group(1)), Length.parse("1 in"));
        }
        Matcher wraps = WRAPS.matcher(text);
        if (wraps.matches()) {
            String over = wraps.group(2);
            return new Thickness.Wraps(
                    number(wraps.group(1)), Length.parse(Character.isDigit(over.charAt(0)) ? over : "1 " + over));
        }
        Matcher count = COUNT.matcher(text);
        if (count.matches()) {
            for (CountSystem system : CountSystem.values()) {
                if (system.isSpelt(count.group(3))) {
                    int plies = count.group(2) == null ? 1 : Integer.parseInt(count.group(2));
                    return new Thickness.Counted(number(count.group(1)), plies, system);
                }
            }
        }
        try {
            return new Thickness.Measured(Length.parse(text));
        } catch (BadMeasure e) {
            throw (BadMeasure) new BadMeasure("thickness.not", Map.of("typed", text)).initCause(e);
        }
    }

    static Thickness parse(String typed, Fibre fibre, UnitSystem units) {
        String text = typed.strip();
        Matcher count = COUNT_ALONE.matcher(text);
        boolean fraction = units == UnitSystem.INCHES && text.startsWith("1/");
        if (count.matches() && !fraction) {
            CountSystem usual = CountSystem.usual(fibre, units);
            return new Thickness.Counted(number(count.group(1)), Integer.parseInt(count.group(2)), usual);
        }
        boolean bare = fraction || NUMBER_ALONE.matcher(text).matches();
        return parse(bare ? text + " " + units.fine().symbol() : text);
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }
}
