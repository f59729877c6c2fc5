package thrumwright.measure;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How closely the warp stands, as it was typed: {@code 3/cm}, {@code 8 per in}, {@code 30/10 cm}.
 *
 * <p>Between {@link #LEAST} and {@link #MOST} ends per mm. Equal when typed alike.
 */
public final class Sett {
    /** The widest sett that is taken for meant, in ends per mm: one end in 10 cm. */
    public static final double LEAST = 0.01;
    /** The closest sett that is taken for meant, in ends per mm. */
    public static final double MOST = 10;

    private final String text;
    private final double endsPerMillimetre;

    private Sett(String text, double endsPerMillimetre) {
        this.text = text;
        this.endsPerMillimetre = endsPerMillimetre;
    }

    /** Apart, since setts are mostly read without. */
    private static final class Forms {
        static final Pattern FORM = Pattern.compile(
                "([^/a-zA-Z]+?)\\s*(?:ends?\\s*)?(?:/|per|in(?=\\s*\\d))\\s*(.+)", Pattern.CASE_INSENSITIVE);
    }

    /** @throws BadMeasure if it is no sett or is beyond the range */
    public static Sett parse(String typed) {
        Optional<PlainMeasure> plain = PlainMeasure.of(typed, '/');
        return plain.isPresent()
                ? checked(typed, plain.get().number() / plain.get().unit().millimetres())
                : readAll(Numbers.spaced(typed));
    }

    private static Sett readAll(String text) {
        Matcher match = Forms.FORM.matcher(text);
        double ends = match.matches() ? Numbers.value(match.group(1)) : Double.NaN;
        if (Double.isNaN(ends)) {
            throw notASett(text);
        }
        return checked(text, ends / over(match.group(2).strip(), text));
    }

    private static Sett checked(String text, double sett) {
        if (!(sett >= LEAST && sett <= MOST)) {
            throw new BadMeasure("sett.range", Map.of("typed", text));
        }
        return new Sett(text, sett);
    }

    private static double over(String unit, String text) {
        try {
            double mm = Length.parse(Character.isLetter(unit.charAt(0)) ? "1 " + unit : unit)
                    .mm();
            if (mm > 0) {
                return mm;
            }
        } catch (BadMeasure e) {
            throw (BadMeasure) notASett(text).initCause(e);
        }
        throw notASett(text);
    }

    private static BadMeasure notASett(String text) {
        return new BadMeasure("sett.not", Map.of("typed", Numbers.brief(text)));
    }

    /** Ends per mm, {@link #LEAST} to {@link #MOST}. */
    public double perMillimetre() {
        return endsPerMillimetre;
    }

    /** From one warp end's middle to the next, mm, 0.1 to 100. */
    public double spacing() {
        return 1 / endsPerMillimetre;
    }

    public String text() {
        return text;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sett sett && text.equals(sett.text);
    }

    @Override
    public int hashCode() {
        return Objects.hash(text);
    }

    @Override
    public String toString() {
        return text;
    }
}
