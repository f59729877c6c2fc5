package thrumwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import thrumwright.measure.Phrases;

/** Gathers the steps of one or more sheets by their kinds. */
final class BookletWriter {
    /** On the loom there is nothing to do for it; the hem shows it. */
    private static final String FOLD = "hem-fold";

    private final List<StepSheet> sheets;
    private final List<String> names;
    private final Phrases phrases;
    private final List<List<Booklet.Own>> own = new ArrayList<>();

    BookletWriter(List<StepSheet> sheets, List<String> names, Phrases phrases) {
        this.sheets = sheets;
        this.names = names;
        this.phrases = phrases;
        sheets.forEach(sheet -> own.add(new ArrayList<>()));
    }

    Booklet booklet() {
        List<BookletEntry> entries = kinds().stream().map(this::entry).toList();
        own.forEach(lines -> lines.sort(Comparator.comparingInt(Booklet.Own::step)));
        return new Booklet(entries, own.stream().map(List::copyOf).toList());
    }

    private Set<String> kinds() {
        Set<String> kinds = new LinkedHashSet<>();
        sheets.forEach(sheet -> sheet.steps().forEach(step -> kinds.add(step.kind())));
        return kinds;
    }

    private BookletEntry entry(String kind) {
        List<List<Step>> steps = sheets.stream()
                .map(sheet -> sheet.steps().stream()
                        .filter(step -> step.kind().equals(kind))
                        .toList())
                .toList();
        KindTelling telling = new KindTelling(steps, names, phrases);
        List<Step> shown =
                steps.stream().filter(some -> !some.isEmpty()).findFirst().orElseThrow();
        BookletEntry entry = new BookletEntry(
                heads(shown),
                kind.equals(FOLD) ? List.of() : pictures(shown),
                Sewn.of(kind),
                telling.sentences(),
                cautions(shown));
        for (int sheet = 0; sheet < own.size(); sheet++) {
            own.get(sheet).addAll(telling.own(sheet));
        }
        return entry;
    }

    private static List<BookletEntry.Head> heads(List<Step> steps) {
        Map<String, List<Integer>> numbers = new LinkedHashMap<>();
        steps.forEach(step -> numbers.computeIfAbsent(step.title(), title -> new ArrayList<>())
                .add(step.number()));
        return numbers.entrySet().stream()
                .map(named -> new BookletEntry.Head(named.getKey(), List.copyOf(named.getValue())))
                .toList();
    }

    /** One for each title: what is called alike is drawn alike. */
    private static List<Step.Picture> pictures(List<Step> steps) {
        Map<String, Step.Picture> pictures = new LinkedHashMap<>();
        steps.forEach(step -> step.picture().ifPresent(picture -> pictures.putIfAbsent(step.title(), picture)));
        return List.copyOf(pictures.values());
    }

    private static List<String> cautions(List<Step> steps) {
        return steps.stream()
                .flatMap(step -> step.cautions().stream())
                .distinct()
                .toList();
    }
}
