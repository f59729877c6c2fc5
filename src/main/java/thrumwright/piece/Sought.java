package thrumwright.piece;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;

/**
 * What a weaver looks for among the structures, in a few words. Every word must be found, or one that means the same; the
 * beginning of a word is enough. “No fringe” finds what has none, and “fringe” doesn't. Capitals, accents, apostrophes, hyphens
 * and a last s make no difference.
 */
final class Sought {
    private final SearchWords language;
    private final List<String> words;
    private final List<String> lacking;

    private Sought(SearchWords language, List<String> words, List<String> lacking) {
        this.language = language;
        this.words = words;
        this.lacking = lacking;
    }

    static Sought of(String typed, SearchWords language) {
        String apart = language.less()
                .matcher(typed.strip())
                .replaceAll(language.none().get(0) + " $1");
        Said said = Said.of(plain(apart), language);
        return new Sought(language, words(said.there(), language), words(said.lacking(), language));
    }

    boolean answeredBy(Structure structure) {
        Said said = Said.of(text(structure), language);
        return words.stream().allMatch(word -> found(word, said.there()) || saysNone(word, said))
                && lacking.stream().allMatch(word -> found(word, said.lacking()));
    }

    /** “No” by itself, or its beginning, while one goes on typing. */
    private boolean saysNone(String word, Said said) {
        return !said.lacking().isEmpty() && language.none().stream().anyMatch(none -> none.startsWith(word));
    }

    private boolean found(String word, String text) {
        return begins(text, word)
                || language.alike().entrySet().stream()
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
    private static List<String> words(String text, SearchWords language) {
        List<String> words = new ArrayList<>();
        String rest = text;
        for (String phrase : language.phrases()) {
            if (rest.contains(" " + phrase)) {
                words.add(phrase);
                rest = rest.replace(" " + phrase, " ");
            }
        }
        Stream.of(rest.strip().split("[ .]+"))
                .filter(word -> !word.isEmpty() && !language.little().contains(word))
                .map(word -> singular(word, language.plural()))
                .forEach(words::add);
        return words;
    }

    private static String singular(String word, String plural) {
        boolean many = word.length() > 3 && word.endsWith(plural);
        return many ? word.substring(0, word.length() - plural.length()) : word;
    }

    /** Small letters and digits with single spaces between; full stops keep apart what doesn't belong together. */
    private static String plain(String text) {
        String letters = Normalizer.normalize(text, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+|['’]", "");
        return letters.replaceAll("[.,;:!?()]+", " . ").replaceAll("[^\\p{L}\\p{N}.]+", " ");
    }

    private String text(Structure structure) {
        List<String> texts = new ArrayList<>(List.of(structure.name(), structure.use(), structure.needs()));
        texts.addAll(structure.goodFor());
        structure.difficulty().ifPresent(difficulty -> texts.add(language.fact(key(difficulty))));
        String told = " " + plain(String.join(" . ", texts));
        List<String> facts = facts(structure.end());
        String none = language.none().get(0) + " ";
        facts.removeIf(fact -> told.contains(" " + fact.replace(none, "")));
        return told + " . " + String.join(" . ", facts);
    }

    /** What its stack says by itself, for structures whose texts are silent about it. */
    private List<String> facts(End end) {
        List<String> facts = new ArrayList<>();
        boolean fringe = end.blocks().stream()
                .anyMatch(block -> block.finish().filter(EdgeFinish::hangs).isPresent());
        facts.add(fringe ? language.fact("fringe") : language.lacking("fringe"));
        List<HemFold> folds = end.blocks().stream()
                .filter(HemFold.class::isInstance)
                .map(HemFold.class::cast)
                .toList();
        facts.add(folds.isEmpty() ? language.lacking("hem") : language.fact("hem"));
        folds.stream()
                .flatMap(fold -> fold.support().stream())
                .map(support -> language.fact(key(support.kind())))
                .forEach(facts::add);
        return facts;
    }

    private static String key(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A text parted into what it says there is and what it says there isn't; either begins with a space. */
    private record Said(String there, String lacking) {
        static Said of(String plain, SearchWords language) {
            String text = " " + plain;
            Matcher without = language.without().matcher(text);
            StringBuilder lacking = new StringBuilder();
            without.results().forEach(each -> lacking.append(each.group(1)));
            return new Said(without.replaceAll(" . "), lacking.toString());
        }
    }
}
