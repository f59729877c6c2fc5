package thrumwright.measure;

import java.io.Serializable;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A sentence that is still to be said, why something is refused: its key among {@link #TEXTS}, and what goes in its places.
 *
 * @param values by the names of the places; a phrase among them is said in the same language as the whole
 */
public record Phrase(String key, Map<String, ?> values) implements Serializable {
    /** The bundle of all such sentences. */
    public static final String TEXTS = "thrumwright.refused";

    public Phrase {
        values = values.entrySet().stream().collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Phrase::value));
    }

    /** One without places. */
    public Phrase(String key) {
        this(key, Map.of());
    }

    /** What is the same in every language, or was said already. */
    public static Phrase of(String text) {
        return new Phrase("as-it-is", Map.of("text", text));
    }

    private static Serializable value(Map.Entry<String, ?> place) {
        return place.getValue() instanceof Phrase inner ? inner : String.valueOf(place.getValue());
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
