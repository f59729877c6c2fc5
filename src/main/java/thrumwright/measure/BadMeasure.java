package thrumwright.measure;

import java.util.Map;

/** What was typed is no measure, or none that can be meant. */
public final class BadMeasure extends Refused {
    private static final long serialVersionUID = 1L;

    /** @param key of the sentence in {@link Phrase#TEXTS} */
    public BadMeasure(String key, Map<String, ?> values) {
        super(key, values);
    }

    /** @param sentence that was said already, in the reader's language */
    public BadMeasure(String sentence) {
        super(Phrase.of(sentence));
    }
}
