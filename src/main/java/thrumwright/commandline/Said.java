package thrumwright.commandline;

import java.util.Locale;
import java.util.Map;
import thrumwright.measure.Phrases;

/** Sentences for whoever asked on the command line. */
final class Said {
    private static final Phrases PHRASES = Phrases.of("thrumwright.commandline.said", Locale.UK);

    private Said() {}

    static String of(String key) {
        return PHRASES.say(key);
    }

    /** A sentence with one place. */
    static String of(String key, String place, Object value) {
        return PHRASES.say(key, Map.of(place, value));
    }
}
