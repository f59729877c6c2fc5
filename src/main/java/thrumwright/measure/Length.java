package thrumwright.measure;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length as somebody typed it, and what it comes to in millimetres.
 *
 * <p>Never negative, never more than a kilometre. Two lengths are equal when they were typed alike: {@code 1 cm} and
 * {@code 10 mm} are the same distance but not the same document.
 */
public final class Length implements Comparable<Length> {
    /** The longest length that is taken for meant: one kilometre, in mm. */
    public static final double MOST = 1_000_000;

    /** An inch on a rule has so many parts. */
    private static final int SIXTEENTHS = 16;

    /** Nobody types more, and reading far more takes long. */
    private static final int MOST_TYPED = 1000;

    private final String text;
    private final double millimetres;

    private Length(String text, double millimetres) {
        this.text = text;
        this.millimetres = millimetres;
    }

    /**
     * Reads {@code 12 mm}, {@code 1.5 cm}, {@code 1 1/2 in}, {@code ½"}, {@code 1 yd 4 in}.
     *
     * @throws BadMeasure if it is no length, has no unit, or is beyond the range
     */
    public static Length parse(String text) {
        return read(text, null);
    }

    /**
     * As {@link #parse(String)}, but a number without a unit is taken to be in {@code usual}, and is kept with it.
     *
     * @throws BadMeasure if it is no length or is beyond the range
     */
    public static Length parse(String text, Unit usual) {
        return read(text, Objects.requireNonNull(usual));
    }

    /**
     * A length that the program makes up itself. It is what its text says, so that it is the same when it is read again: whole
     * sixteenths of an inch as a fraction, all else with up to three decimals.
     *
     * @param amount how many of {@code unit}; 0 to a kilometre
     * @throws BadMeasure if it is beyond the range
     */
    public static Length of(double amount, Unit unit) {
        double parts = amount * SIXTEENTHS;
        boolean ruled = unit == Unit.INCH && parts % 1 == 0 && parts % SIXTEENTHS != 0 && parts < MOST;
        String number = ruled ? Shown.mixed((long) parts, SIXTEENTHS) : Decimals.plain(amount, 3, Locale.ROOT);
        return parse(checked(number + " " + unit.symbol(), amount * unit.millimetres())
                .text());
    }

    private static Length read(String typed, Unit usual) {
        Optional<PlainMeasure> plain = PlainMeasure.of(typed, ' ');
        return plain.isPresent() ? checked(typed, plain.get().millimetres()) : readAll(typed, usual);
    }

    /** Apart, since lengths are mostly read without. */
    private static final class Parts {
        static final Pattern PART = Pattern.compile(Numbers.PATTERN + "\\s*([\\p{L}]+|''|[\"″”'′’])?\\s*");
    }

    private static Length readAll(String typed, Unit usual) {
        if (typed.length() > MOST_TYPED) {
            throw new BadMeasure("length.wordy", Map.of("most", MOST_TYPED, "count", typed.length()));
        }
        String text = Numbers.spaced(typed);
        String plain = Numbers.plain(text);
        if (plain.startsWith("-") || plain.startsWith("−")) {
            throw negative(text);
        }
        Matcher part = Parts.PART.matcher(plain);
        double sum = 0;
        int at = 0;
        Unit last = null;
        boolean bare = false;
        while (at < plain.length()) {
            part.region(at, plain.length());
            double number = part.lookingAt() ? Numbers.value(part, 1) : Double.NaN;
            if (Double.isNaN(number)) {
                throw notALength(text);
            }
            bare = part.group(4) == null;
            Unit unit = bare ? usual : Unit.spelt(part.group(4)).orElseThrow(() -> notALength(text));
            if (unit == null) {
                throw new BadMeasure("length.no-unit", Map.of("typed", Numbers.brief(text)));
            }
            if (last != null && (bare || unit.millimetres() >= last.millimetres())) {
                throw notALength(text);
            }
            sum += number * unit.millimetres();
            last = unit;
            at = part.end();
        }
        if (last == null) {
            throw new BadMeasure("length.nothing", Map.of());
        }
        return checked(bare ? text + " " + last.symbol() : text, sum);
    }

    private static BadMeasure notALength(String text) {
        return new BadMeasure("length.not", Map.of("typed", Numbers.brief(text)));
    }

    private static BadMeasure negative(String text) {
        return new BadMeasure("length.negative", Map.of("typed", text));
    }

    private static Length checked(String text, double millimetres) {
        if (!(millimetres >= 0)) {
            throw negative(text);
        }
        if (millimetres > MOST) {
            throw new BadMeasure("length.too-long", Map.of("typed", text));
        }
        return new Length(text, millimetres);
    }

    /** The distance in millimetres, 0 to {@link #MOST}. */
    public double mm() {
        return millimetres;
    }

    /** What was typed, with its unit. */
    public String text() {
        return text;
    }

    @Override
    public int compareTo(Length other) {
        int byDistance = Double.compare(millimetres, other.millimetres);
        return byDistance != 0 ? byDistance : text.compareTo(other.text);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Length length && text.equals(length.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
