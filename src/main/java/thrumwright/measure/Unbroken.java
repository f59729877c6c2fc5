package thrumwright.measure;

import java.util.regex.Pattern;

/** Keeps together on a line what is read as one: a number and its unit or its fraction, and a letter with its stroke, Z ( / ). */
public final class Unbroken {
    private static final char SPACE = '\u00a0';

    /** A space after figures and before a unit, a fraction or the sign for times. */
    private static final Pattern MEASURE =
            Pattern.compile(" (?<=[\\d½¼¾⅛⅜⅝⅞⅓⅔⅙⅚₀-₉] )(?=(?:mm|cm|m|in|yd|g|oz|%|×)(?![\\p{L}\\d])|\\d+/\\d)");

    private static final Pattern STROKE = Pattern.compile("([ZS]) \\( ([/\\\\]) \\)");

    private Unbroken() {}

    /** The same text with spaces that don't break in such places; nothing else is changed. */
    public static String of(String text) {
        String measures = MEASURE.matcher(text).replaceAll(String.valueOf(SPACE));
        return !measures.contains(" ( ")
                ? measures
                : STROKE.matcher(measures).replaceAll("$1" + SPACE + "(" + SPACE + "$2" + SPACE + ")");
    }

    /** A piece of such a text with plain spaces again, as it is set. */
    public static String plain(String line) {
        return line.replace(SPACE, ' ');
    }
}
