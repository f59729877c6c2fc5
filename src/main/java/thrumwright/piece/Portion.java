package thrumwright.piece;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;

/**
 * A part of the design's area, as it was typed: a share like {@code 25 %}, or the height of a stripe over the whole width like
 * {@code 8 cm}.
 *
 * @param text as typed
 * @param share of the design, 0 to 1; 0 for a height
 * @param mm height, 0 or more; 0 for a share
 */
public record Portion(String text, double share, double mm) {
    private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:[.,]\\d{1,4})?)\\s*%");

    /** @throws BadMeasure if it is neither a share of at most 100 % nor a length */
    public static Portion parse(String typed) {
        String text = typed.strip();
        Matcher percent = PERCENT.matcher(text);
        if (percent.matches()) {
            double share = Double.parseDouble(percent.group(1).replace(',', '.')) / 100;
            if (share > 1) {
                throw bad(text);
            }
            return new Portion(text, share, 0);
        }
        try {
            return new Portion(text, 0, Length.parse(text).mm());
        } catch (BadMeasure e) {
            throw (BadMeasure) bad(text).initCause(e);
        }
    }

    /** @param usual unit of a number alone, which is a height */
    public static Portion parse(String typed, Unit usual) {
        return PERCENT.matcher(typed.strip()).matches()
                ? parse(typed)
                : parse(Length.parse(typed, usual).text());
    }

    private static BadMeasure bad(String typed) {
        return new BadMeasure("portion.not", Map.of("typed", typed));
    }

    /**
     * Share of the design, 0 or more; more than 1 if the height is more than the design's.
     *
     * @param height of the design, mm, more than 0
     */
    public double of(double height) {
        return share > 0 ? share : mm / height;
    }
}
