package thrumwright.piece;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;
import thrumwright.block.Support;
import thrumwright.measure.Phrases;

/**
 * What a weaver looks for among the structures, in a few words. Every word must be found, or one that means the same; the
 * beginning of a word is enough. “No fringe” finds what has none, and “fringe” doesn't. Capitals, accents, apostrophes, hyphens
 * and a last s make no difference.
 */
final class Sought {
    private static final Phrases WORDS = Phrases.of("thrumwright.piece.search", Locale.UK);
    private static final Set<String> LITTLE = Set.of(WORDS.say("little-words").split(" "));
    private static final List<String> NONE = List.of(WORDS.say("none-words").split(" "));
    private static final List<String> PHRASES = List.of(WORDS.say("phrases").split(", *"));
    private static final Map<String, List<String>> ALIKE = alike(WORDS.say("alike"));

    /** “No fringe”, “without a hem or fringe”. */
    private static final Pattern WITHOUT = Pattern.compile(
            "\\b(?:" + String.join("|", NONE) + ")((?: (?:a|an|any|the))? \\p{L}+(?: (?:or|nor) \\p{L}+)*)");

    /** “Hemless”, “fringe-free”. */
    private static final Pattern LESS =
            Pattern.compile("\\b(\\p{L}+?)(?:less\\b|-free\\b| free$)", Pattern.CASE_INSENSITIVE);

    private final List<String> words;
    private final List<String> lacking;

    private Sought(List<String> words, List<String> lacking) {
        this.words = words;
        this.lacking = lacking;
    }

    static Sought of(String typed) {
        Said said = Said.of(plain(LESS.matcher(typed.strip()).replaceAll("no $1")));
        return new Sought(words(said.there()), words(said.lacking()));
    }

    boolean answeredBy(Structure structure) {
        Said said = Said.of(text(structure));
        return words.stream().allMatch(word -> found(word, said.there()) || saysNone(word, said))
                && lacking.stream().allMatch(word -> found(word, said.lacking()));
    }

    /** “No” by itself, or its beginning, while one goes on typing. */
    private static boolean saysNone(String word, Said said) {
        return !said.lacking().isEmpty() && NONE.stream().anyMatch(none -> none.startsWith(word));
    }

    private static boolean found(String word, String text) {
        return begins(text, word)
                || ALIKE.entrySet().stream()
                        .filter(alike -> means(word, alike.getKey()))
                        .flatMap(alike -> alike.getValue().stream())
                        .anyMatch(other -> begins(text, other));
    }

    /** Whether a word is of that kind, or may become so when it is typed on. */
    private static boolean means(String word, String key) {
        return word.startsWith(key) || key.startsWith(word);
    }

    private static boolean begins(String text, String word) {
        return text.contains(" " + word);
    }

    /** The words that count, and phrases that stay together; without the last s of those that aren't short. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        String rest = text;
        for (String phrase : PHRASES) {
            if (rest.contains(" " + phrase)) {
                words.add(phrase);
                rest = rest.replace(" " + phrase, " ");
            }
        }
        Stream.of(rest.strip().split("[ .]+"))
                .filter(word -> !word.isEmpty() && !LITTLE.contains(word))
                .map(word -> word.length() > 3 && word.endsWith("s") ? word.substring(0, word.length() - 1) : word)
                .forEach(words::add);
        return words;
    }

    /** Small letters and digits with single spaces between; full stops keep apart what doesn't belong together. */
    private static String plain(String text) {
        String letters = Normalizer.normalize(text, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+|['’]", "");
        return letters.replaceAll("[.,;:!?()]+", " . ").replaceAll("[^\\p{L}\\p{N}.]+", " ");
    }

    private static String text(Structure structure) {
        List<String> texts = new ArrayList<>(List.of(structure.name(), structure.use(), structure.needs()));
        texts.addAll(structure.goodFor());
        structure
                .difficulty()
                .ifPresent(difficulty -> texts.add(difficulty.name().replace('_', ' ')));
        String told = " " + plain(String.join(" . ", texts));
        List<String> facts = facts(structure.end());
        facts.removeIf(fact -> told.contains(" " + fact.replace("no ", "")));
        return told + " . " + String.join(" . ", facts);
    }

    /** What its stack says by itself, for structures whose texts are silent about it. */
    private static List<String> facts(End end) {
        List<String> facts = new ArrayList<>();
        boolean fringe = end.blocks().stream()
                .anyMatch(block -> block.finish().filter(EdgeFinish::hangs).isPresent());
        facts.add(fringe ? "fringe" : "no fringe");
        List<HemFold> folds = end.blocks().stream()
                .filter(HemFold.class::isInstance)
                .map(HemFold.class::cast)
                .toList();
        facts.add(folds.isEmpty() ? "no hem" : "hem");
        folds.stream()
                .flatMap(fold -> fold.support().stream())
                .map(Sought::named)
                .forEach(facts::add);
        return facts;
    }

    private static String named(Support support) {
        return switch (support.kind()) {
            case BAR -> "bar";
            case SLAT -> "slat";
            case STRIP -> "strip";
        };
    }

    private static Map<String, List<String>> alike(String told) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (String each : told.split("; *")) {
            String[] parts = each.split(": *");
            alike.put(parts[0], List.of(parts[1].split(", *")));
        }
        return alike;
    }

    /** A text parted into what it says there is and what it says there isn't; either begins with a space. */
    private record Said(String there, String lacking) {
        static Said of(String plain) {
            String text = " " + plain;
            Matcher without = WITHOUT.matcher(text);
            StringBuilder lacking = new StringBuilder();
            without.results().forEach(each -> lacking.append(each.group(1)));
            return new Said(without.replaceAll(" . "), lacking.toString());
        }
    }
}
