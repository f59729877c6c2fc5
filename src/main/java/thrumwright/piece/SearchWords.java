package thrumwright.piece;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import thrumwright.measure.Phrases;

/**
 * The words of a language in which weavers look for structures.
 *
 * @param phrases what is only meant as a whole
 * @param little words that mean nothing by themselves
 * @param none words that say that something isn't there; the first is put where another way of saying so stood
 * @param plural what a word in the plural ends with
 * @param alike what weavers type, and what the structures say instead
 * @param without says that something isn't there; its first group is what
 * @param less one word that says so; its first group is what
 * @param facts what a stack shows by itself, by key
 */
public record SearchWords(
        List<String> phrases,
        Set<String> little,
        List<String> none,
        String plural,
        Map<String, List<String>> alike,
        Pattern without,
        Pattern less,
        Map<String, String> facts) {
    private static final List<String> FACTS =
            List.of("fringe", "hem", "bar", "slat", "strip", "first-piece", "some-practice", "patient-hands");

    /** @param texts of the bundle {@code thrumwright.piece.search} */
    public static SearchWords of(Phrases texts) {
        List<String> none = List.of(texts.say("none-words").split(" "));
        String without = texts.unfilled("without").replace("NONE", String.join("|", none));
        return new SearchWords(
                List.of(texts.say("phrases").split(", *")),
                Set.of(texts.say("little-words").split(" ")),
                none,
                texts.say("plural"),
                alike(texts.say("alike")),
                Pattern.compile(without),
                Pattern.compile(texts.unfilled("less"), Pattern.CASE_INSENSITIVE),
                FACTS.stream().collect(Collectors.toUnmodifiableMap(fact -> fact, fact -> texts.say("fact." + fact))));
    }

    private static Map<String, List<String>> alike(String told) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (String each : told.split("; *")) {
            String[] parts = each.split(": *");
            alike.put(parts[0], List.of(parts[1].split(", *")));
        }
        return alike;
    }

    /** That something of the stack is there. */
    String fact(String key) {
        return facts.get(key);
    }

    /** That it isn't. */
    String lacking(String key) {
        return none.get(0) + " " + fact(key);
    }
}
