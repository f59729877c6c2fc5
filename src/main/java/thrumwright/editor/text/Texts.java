package thrumwright.editor.text;

import java.util.Locale;
import java.util.Map;
import thrumwright.measure.Phrases;
import thrumwright.plan.words.Words;

/**
 * Everything that the window says.
 *
 * @param locale the language wanted; where there is no text in it, English
 * @param phrases of the window
 * @param words names of blocks and places
 */
public record Texts(Locale locale, Phrases phrases, Words words) {
    public static Texts of(Locale locale) {
        return new Texts(locale, Phrases.of("thrumwright.editor.texts", locale), new Words(locale));
    }

    public String say(String key) {
        return phrases.say(key);
    }

    public String say(String key, Map<String, ?> values) {
        return phrases.say(key, values);
    }

    /** With a capital first letter. */
    public static String capitalised(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** The name of an enum's value under a key, such as {@code fibre.wool}. */
    public String name(String key, Enum<?> value) {
        return say(key + "." + value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
