package thrumwright.commandline;

import java.util.Locale;
import java.util.Map;
import thrumwright.measure.Phrases;
import thrumwright.plan.finding.Severity;

/** Sentences for whoever asked on the command line. */
final class Said {
    private static final Phrases PHRASES = Phrases.of("thrumwright.commandline.said", Locale.UK);

    private Said() {}

    static String of(String key) {
        return PHRASES.say(key);
    }

    /** A sentence with one place. */
    static String of(String key, String place, Object value) {
        return of(key, Map.of(place, value));
    }

    static String of(String key, Map<String, ?> values) {
        return PHRASES.say(key, values);
    }

    /** A finding with how much it weighs. */
    static String finding(Severity severity, String sentence) {
        return of("finding." + severity.name().toLowerCase(Locale.ROOT), "finding", sentence);
    }
}
