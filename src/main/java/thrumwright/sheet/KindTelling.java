package thrumwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import thrumwright.measure.Phrases;

/**
 * What is told once of all steps of a kind, on all looms. A sentence that is the same everywhere is told as it is; one that differs
 * in what the card says, without that; one that differs otherwise, for each step; and what differs from loom to loom is
 * left to the looms' own pages.
 */
final class KindTelling {
    /** Says where to look, so it differs on paper of another sort. */
    private static final String ROW_LIST = "rows.list";

    /** So many looms are named where they differ from all others. */
    private static final int MOST_NAMED = 4;

    private final List<List<Step>> looms;
    private final List<String> names;
    private final Phrases phrases;
    private final int steps;
    private final List<List<Booklet.Own>> own = new ArrayList<>();

    /**
     * @param looms the steps of the kind on each loom
     * @param names of the looms
     */
    KindTelling(List<List<Step>> looms, List<String> names, Phrases phrases) {
        this.looms = looms;
        this.names = names;
        this.phrases = phrases;
        this.steps = looms.stream().mapToInt(List::size).max().orElse(0);
        looms.forEach(loom -> own.add(new ArrayList<>()));
    }

    /** What is told for all. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        keys().forEach(key -> sentences.addAll(told(key)));
        if (own.stream().anyMatch(lines -> !lines.isEmpty())) {
            sentences.add(phrases.say("booklet.own"));
        }
        return sentences;
    }

    /** What {@link #sentences} left to one loom. */
    List<Booklet.Own> own(int loom) {
        return own.get(loom);
    }

    /** The keys of all sentences, each before those that it leads to in its step. */
    private List<String> keys() {
        List<String> keys = new ArrayList<>();
        looms.forEach(loom -> loom.forEach(
                step -> addTo(keys, step.told().stream().map(Sentence::key).toList())));
        return keys;
    }

    private static void addTo(List<String> known, List<String> keys) {
        for (int i = 0; i < keys.size(); i++) {
            if (!known.contains(keys.get(i))) {
                int next = keys.subList(i, keys.size()).stream()
                        .mapToInt(known::indexOf)
                        .filter(at -> at >= 0)
                        .findFirst()
                        .orElse(known.size());
                known.add(next, keys.get(i));
            }
        }
    }

    private List<String> told(String key) {
        Function<Sentence, String> here = key.equals(ROW_LIST) ? Sentence::anywhere : Sentence::text;
        Optional<String> same = everywhere(key, here).or(() -> everywhere(key, Sentence::anywhere));
        return same.map(List::of).orElseGet(() -> byStep(key));
    }

    /** What all steps of all looms say; empty if one says otherwise or nothing. */
    private Optional<String> everywhere(String key, Function<Sentence, String> words) {
        List<Optional<String>> all = IntStream.range(0, steps)
                .mapToObj(step -> onAllLooms(step, key, words))
                .distinct()
                .toList();
        return all.size() == 1 ? all.get(0) : Optional.empty();
    }

    private Optional<String> onAllLooms(int step, String key, Function<Sentence, String> words) {
        List<Optional<String>> said = IntStream.range(0, looms.size())
                .mapToObj(loom -> sentence(loom, step, key).map(words))
                .distinct()
                .toList();
        return said.size() == 1 && sameNumber(step) ? said.get(0) : Optional.empty();
    }

    private Optional<Sentence> sentence(int loom, int step, String key) {
        List<Step> all = looms.get(loom);
        return step >= all.size()
                ? Optional.empty()
                : all.get(step).told().stream()
                        .filter(sentence -> sentence.key().equals(key))
                        .findFirst();
    }

    /** Who says it, and of which steps; nobody in particular: all looms. */
    private record Told(String whose, String text) {}

    private List<String> byStep(String key) {
        Map<Told, List<Integer>> numbers = new LinkedHashMap<>();
        for (int step = 0; step < steps; step++) {
            List<Told> told = told(step, key);
            for (Told each : told) {
                numbers.computeIfAbsent(each, none -> new ArrayList<>())
                        .add(looms.get(0).get(step).number());
            }
            if (told.isEmpty()) {
                leave(step, key);
            }
        }
        return numbers.entrySet().stream()
                .map(told -> labelled(told.getValue(), told.getKey()))
                .toList();
    }

    /** What the looms say of a step: all the same, or a few of them otherwise; nothing where too many differ. */
    private List<Told> told(int step, String key) {
        // what one step alone says needn't be true of others
        Function<Sentence, String> wording = alone(key) ? Sentence::text : Sentence::anywhere;
        Map<Optional<String>, List<Integer>> said = new LinkedHashMap<>();
        for (int loom = 0; loom < looms.size(); loom++) {
            said.computeIfAbsent(sentence(loom, step, key).map(wording), none -> new ArrayList<>())
                    .add(loom);
        }
        List<Integer> most =
                said.values().stream().max(Comparator.comparingInt(List::size)).orElseThrow();
        if (!sameNumber(step) || looms.size() - most.size() > MOST_NAMED) {
            return List.of();
        }
        List<Told> told = new ArrayList<>();
        said.forEach((text, some) ->
                text.ifPresent(sentence -> told.add(new Told(whose(some, some == most), sentence))));
        return told;
    }

    /** Whether only one step says it, and there is only one loom. */
    private boolean alone(String key) {
        return looms.size() == 1
                && IntStream.range(0, steps)
                                .filter(step -> sentence(0, step, key).isPresent())
                                .count()
                        == 1;
    }

    private String whose(List<Integer> some, boolean most) {
        if (some.size() == looms.size()) {
            return "";
        }
        return most
                ? phrases.say("booklet.others")
                : some.stream().map(names::get).collect(Collectors.joining(", "));
    }

    private boolean sameNumber(int step) {
        return looms.stream()
                        .map(loom -> step < loom.size() ? loom.get(step).number() : 0)
                        .distinct()
                        .count()
                == 1;
    }

    private void leave(int step, String key) {
        for (int loom = 0; loom < looms.size(); loom++) {
            List<Step> all = looms.get(loom);
            List<Booklet.Own> lines = own.get(loom);
            sentence(loom, step, key)
                    .ifPresent(sentence -> lines.add(new Booklet.Own(
                            all.get(step).number(), all.get(step).title(), sentence.text())));
        }
    }

    private String labelled(List<Integer> numbers, Told told) {
        boolean all = numbers.size() == steps;
        String which = numbers.stream().map(Objects::toString).collect(Collectors.joining(", "));
        Map<String, Object> values = Map.of("steps", which, "names", told.whose(), "text", told.text());
        if (told.whose().isEmpty()) {
            return all ? told.text() : phrases.say(numbers.size() == 1 ? "booklet.step" : "booklet.steps", values);
        }
        return phrases.say(all ? "booklet.whose" : "booklet.step.whose", values);
    }
}
