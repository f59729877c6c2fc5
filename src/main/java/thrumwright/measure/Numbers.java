package thrumwright.measure;

import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads numbers as weavers write them: {@code 12}, {@code 1.5}, {@code 1,5}, {@code 1/2}, {@code 1 1/2}, {@code 1½}. */
final class Numbers {
    static final Map<Character, String> VULGAR = Map.ofEntries(
            Map.entry('½', "1/2"),
            Map.entry('¼', "1/4"),
            Map.entry('¾', "3/4"),
            Map.entry('⅛', "1/8"),
            Map.entry('⅜', "3/8"),
            Map.entry('⅝', "5/8"),
            Map.entry('⅞', "7/8"),
            Map.entry('⅓', "1/3"),
            Map.entry('⅔', "2/3"),
            Map.entry('⅙', "1/6"),
            Map.entry('⅚', "5/6"),
            Map.entry('⅕', "1/5"),
            Map.entry('⅖', "2/5"),
            Map.entry('⅗', "3/5"),
            Map.entry('⅘', "4/5"),
            Map.entry('⅐', "1/7"),
            Map.entry('⅑', "1/9"),
            Map.entry('⅒', "1/10"));

    static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

    /** A fraction in raised and lowered figures, as in ¹³⁄₁₆, or begun with the sign for one over, as in ⅟₁₆. */
    private static final Pattern RAISED_FRACTION =
            Pattern.compile("(?:([" + RAISED + "]+)\\s*[⁄∕/]|⅟)\\s*([" + LOWERED + "]+)");

    /** A number at the start of a text; groups: whole or decimal, then numerator and denominator. */
    static final String PATTERN =
            "(?:(\\d{1,9}(?:[.,]\\d{1,12})?|[.,]\\d{1,12})(?!\\d*\\s*/)\\s*)?(?:(\\d{1,9})\\s*/\\s*(\\d{1,9}))?";

    /** Half an inch, a quarter inch, 1 and three quarters; the group is the part. */
    private static final Pattern SPOKEN = Pattern.compile(
            "(?:\\band )?\\b(?:an? |one )?(half|three[- ]quarters?|quarter)\\b(?: of)?(?: an?\\b)?",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern WHOLE = Pattern.compile(PATTERN);

    private Numbers() {}

    /** The same text with single plain spaces, none at its ends; spaces that don't break count as well. */
    static String spaced(String typed) {
        return typed.replaceAll("[\\s\\h]+", " ").strip();
    }

    /** A text to be quoted in a sentence. */
    static String brief(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    /** The same text with ½ and ¹³⁄₁₆ and their like spelt out and each apart from what stands before it. */
    static String plain(String text) {
        String spoken = SPOKEN.matcher(text).replaceAll(Numbers::figures);
        String figures = RAISED_FRACTION.matcher(spoken).replaceAll(Numbers::spelt);
        StringBuilder plain = new StringBuilder();
        for (char c : figures.toCharArray()) {
            String spelt = VULGAR.get(c);
            plain.append(spelt == null ? String.valueOf(c == '⁄' || c == '∕' ? '/' : c) : " " + spelt);
        }
        return plain.toString().strip();
    }

    private static String figures(MatchResult spoken) {
        return switch (spoken.group(1).toLowerCase(Locale.ROOT).charAt(0)) {
            case 'h' -> "1/2";
            case 't' -> "3/4";
            default -> "1/4";
        };
    }

    private static String spelt(MatchResult fraction) {
        String top = fraction.group(1) == null ? "1" : figures(fraction.group(1), RAISED);
        return " " + top + "/" + figures(fraction.group(2), LOWERED);
    }

    private static String figures(String written, String alphabet) {
        StringBuilder plain = new StringBuilder();
        for (char c : written.toCharArray()) {
            plain.append(alphabet.indexOf(c));
        }
        return plain.toString();
    }

    /** The value of a text that is one number and nothing else, or NaN. */
    static double value(String text) {
        String plain = plain(text);
        Matcher match = WHOLE.matcher(plain);
        if (plain.isEmpty() || !match.matches()) {
            return Double.NaN;
        }
        return value(match, 1);
    }

    /** The value of the three groups of {@link #PATTERN}, beginning at {@code group}; NaN if there is no number. */
    static double value(Matcher match, int group) {
        String whole = match.group(group);
        String top = match.group(group + 1);
        if (whole == null && top == null) {
            return Double.NaN;
        }
        double value = whole == null ? 0 : Double.parseDouble(whole.replace(',', '.'));
        if (top == null) {
            return value;
        }
        double below = Double.parseDouble(match.group(group + 2));
        boolean mixed = whole != null && (whole.contains(".") || whole.contains(","));
        return below == 0 || mixed ? Double.NaN : value + Double.parseDouble(top) / below;
    }
}
