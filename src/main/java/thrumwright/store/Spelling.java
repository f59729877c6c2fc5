package thrumwright.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which name somebody meant who wrote another. */
public final class Spelling {
    /** A longer name may be further from what was meant. */
    private static final int LONG = 6;

    /** By these a program marks what is its own in somebody else's file, as in “x-loomroom” or “my:season”. */
    private static final Pattern OWN = Pattern.compile("(?i)x-.*|[_$].*|.*[:./].*");

    private Spelling() {}

    /** Whether a field says by its name that it is somebody else's. */
    static boolean isOthers(String name) {
        return OWN.matcher(name).matches();
    }

    /** The known name that is nearest, if one is near. */
    public static Optional<String> likely(String name, Collection<String> known) {
        int most = name.length() < LONG ? 1 : 2;
        return known.stream()
                .filter(each -> distance(name, each) <= most || swapped(name, each))
                .min(Comparator.<String>comparingInt(each -> distance(name, each))
                        .thenComparing(each -> each));
    }

    /** Whether only two letters beside each other have changed places. */
    private static boolean swapped(String one, String other) {
        String from = one.toLowerCase(Locale.ROOT);
        for (int i = 1; i < from.length(); i++) {
            String back = from.substring(0, i - 1) + from.charAt(i) + from.charAt(i - 1) + from.substring(i + 1);
            if (back.equalsIgnoreCase(other)) {
                return true;
            }
        }
        return false;
    }

    /** How many letters must be put in, taken out or changed, whatever their case. */
    private static int distance(String one, String other) {
        String from = one.toLowerCase(Locale.ROOT);
        String to = other.toLowerCase(Locale.ROOT);
        int[] before = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] now = new int[to.length() + 1];
            now[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int changed = before[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(changed, Math.min(before[j], now[j - 1]) + 1);
            }
            before = now;
        }
        return before[to.length()];
    }
}
