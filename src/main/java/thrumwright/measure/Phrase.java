package thrumwright.measure;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * A sentence that is still to be said, why something is refused: its key among {@link #TEXTS}, and what goes in its places.
 *
 * @param values by the names of the places; a phrase among them is said in the same language as the whole
 */
public record Phrase(String key, Map<String, ?> values) implements Serializable {
    /** The bundle of all such sentences. */
    public static final String TEXTS = "thrumwright.refused";

    public Phrase {
        Map<String, Serializable> said = new HashMap<>();
        for (Map.Entry<String, ?> place : values.entrySet()) {
            said.put(place.getKey(), value(place.getValue()));
        }
        values = Map.copyOf(said);
    }

    /** One without places. */
    public Phrase(String key) {
        this(key, Map.of());
    }

    /** What is the same in every language, or was said already. */
    public static Phrase of(String text) {
        return new Phrase("as-it-is", Map.of("text", text));
    }

    private static Serializable value(Object there) {
        return there instanceof Phrase inner ? inner : String.valueOf(there);
    }

    /** The sentence in the best language for a reader. */
    public String in(Locale reader) {
        return Phrases.of(TEXTS, reader).say(this);
    }

    /** The sentence in the language that the program was written in. */
    @Override
    public String toString() {
        return in(Locale.ROOT);
    }
}
