package thrumwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import thrumwright.measure.Phrases;

/**
 * Equal lengths of equal yarn, cut in one go.
 *
 * @param lines of the cut list, at least one
 */
public record CutGroup(List<CutLine> lines) {
    private record Alike(Object yarn, String what, String length) {}

    public CutGroup {
        lines = List.copyOf(lines);
    }

    /** A cut list with equal lengths together, in the order of their first use. */
    public static List<CutGroup> of(List<CutLine> cuts) {
        Map<Alike, List<CutLine>> groups = new LinkedHashMap<>();
        cuts.forEach(cut -> groups.computeIfAbsent(
                        new Alike(cut.yarn(), cut.what(), cut.length()), alike -> new ArrayList<>())
                .add(cut));
        return groups.values().stream().map(CutGroup::new).toList();
    }

    public CutLine first() {
        return lines.get(0);
    }

    /** How many pieces of that length in all. */
    public int count() {
        return lines.stream().mapToInt(CutLine::count).sum();
    }

    /** The numbers of the steps that take them. */
    public List<Integer> steps() {
        return lines.stream().map(CutLine::step).toList();
    }

    /**
     * What is said of some of its lines beside what they are for: whose it is, unless it is said of all.
     *
     * @param phrases of the step sheet
     */
    public List<String> remarks(Phrases phrases) {
        Map<String, List<Integer>> said = new LinkedHashMap<>();
        for (CutLine line : lines) {
            if (!line.shared().isEmpty()) {
                said.computeIfAbsent(line.shared(), remark -> new ArrayList<>()).add(line.step());
            }
        }
        return said.entrySet().stream()
                .map(each -> each.getValue().size() == lines.size()
                        ? each.getKey()
                        : phrases.say(
                                "cut.of-steps",
                                Map.of(
                                        "count", each.getValue().size(),
                                        "steps",
                                                each.getValue().stream()
                                                        .map(String::valueOf)
                                                        .collect(Collectors.joining(", ")),
                                        "said", each.getKey())))
                .toList();
    }
}
