package thrumwright.sheet;

import java.util.List;
import java.util.Map;
import thrumwright.measure.Phrases;

/**
 * One sentence of a step.
 *
 * @param key the same for the same sentence of different steps
 * @param text what it says in this step
 * @param anywhere the same without what differs from step to step and stands on a card; the text itself where nothing does
 */
public record Sentence(String key, String text, String anywhere) {
    private static final String ANYWHERE = ".any";

    static Sentence of(Phrases phrases, String key, Map<String, ?> values) {
        String text = phrases.say(key, values);
        return new Sentence(key, text, phrases.has(key + ANYWHERE) ? phrases.say(key + ANYWHERE, values) : text);
    }

    /** Somebody's own words, or a sentence that isn't like any other. */
    static Sentence own(String text) {
        return new Sentence(text, text, text);
    }

    static List<Sentence> own(List<String> texts) {
        return texts.stream().map(Sentence::own).toList();
    }
}
