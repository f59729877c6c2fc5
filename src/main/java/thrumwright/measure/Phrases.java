package thrumwright.measure;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences from a text bundle with named places: {@code "{picks} {picks|pick|picks} of {yarn}"}.
 *
 * <p>{@code {name}} becomes the value; {@code {name|one|many}} becomes {@code one} where the value is 1, else
 * {@code many}.
 */
public record Phrases(ResourceBundle bundle, ResourceBundle everywhere) {
    private static final Pattern PLACE = Pattern.compile("\\{([a-zA-Z]+)(?:\\|([^|}]*)\\|([^|}]*))?}");

    /** What is said of kinds of blocks stands together, whoever says it. */
    private static final String EVERYWHERE = "thrumwright.blocks";

    /**
     * The bundle of that full name, such as {@code thrumwright.sheet.steps}, in the best language for {@code locale}. What it
     * lacks is looked for in {@code thrumwright.blocks}.
     */
    public static Phrases of(String bundle, Locale locale) {
        return new Phrases(bundle(bundle, locale), bundle(EVERYWHERE, locale));
    }

    private static ResourceBundle bundle(String name, Locale locale) {
        ResourceBundle.Control rootIfMissing =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return ResourceBundle.getBundle(name, locale, Phrases.class.getClassLoader(), rootIfMissing);
    }

    public boolean has(String key) {
        return bundle.containsKey(key) || everywhere.containsKey(key);
    }

    /**
     * The sentence under {@code key}.
     *
     * @throws MissingResourceException if there is none
     * @throws IllegalArgumentException if the sentence has a place that {@code values} lacks
     */
    public String say(String key, Map<String, ?> values) {
        return fill(unfilled(key), values);
    }

    /** The same for a phrase whose places may hold phrases. */
    public String say(Phrase phrase) {
        Map<String, Object> values = new HashMap<>(phrase.values());
        values.replaceAll((place, value) -> value instanceof Phrase inner ? say(inner) : value);
        return say(phrase.key(), values);
    }

    public String say(String key) {
        return say(key, Map.of());
    }

    /** The sentence under {@code key} with its places as they stand, for one that is about places. */
    public String unfilled(String key) {
        return (bundle.containsKey(key) ? bundle : everywhere).getString(key);
    }

    /** The names of a sentence's places, in their order. */
    public static List<String> places(String sentence) {
        return PLACE.matcher(sentence).results().map(place -> place.group(1)).toList();
    }

    /** A brace that belongs to no place, with a little of what follows it. */
    public static Optional<String> stray(String sentence) {
        String rest = PLACE.matcher(sentence).replaceAll(" ");
        int open = rest.indexOf('{');
        int at = open >= 0 ? open : rest.indexOf('}');
        return at < 0
                ? Optional.empty()
                : Optional.of(
                        Numbers.brief(rest.substring(at).lines().findFirst().orElse("")));
    }

    /** Fills a sentence that came from elsewhere, such as a teacher's own wording. */
    public static String fill(String sentence, Map<String, ?> values) {
        int open = sentence.indexOf('{');
        if (open < 0) {
            return sentence;
        }
        Matcher place = PLACE.matcher(sentence);
        StringBuilder filled = new StringBuilder();
        int done = 0;
        for (; open >= 0; open = sentence.indexOf('{', Math.max(done, open + 1))) {
            if (place.region(open, sentence.length()).lookingAt()) {
                filled.append(sentence, done, open).append(filled(place, values));
                done = place.end();
            }
        }
        return filled.append(sentence, done, sentence.length()).toString();
    }

    private static String filled(Matcher place, Map<String, ?> values) {
        Object value = values.get(place.group(1));
        if (value == null) {
            throw new IllegalArgumentException("nothing to put in the place {" + place.group(1) + "}");
        }
        String text = String.valueOf(value);
        return place.group(2) == null ? text : text.equals("1") ? place.group(2) : place.group(3);
    }
}
