package thrumwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.words.Words;
import thrumwright.yarn.Yarn;

/** Gathers the cuts of all looms of a class: equal lengths of one yarn are cut together. */
final class ClassCuts {
    /** Two parts of a row are about four lines. */
    private static final int MOST_LETTERS = 240;
    /** Lengths that differ by less than this are one, in hundredths of a mm. */
    private static final double SAME = 100;

    private final WrittenClass written;
    private final ClassPlan plan;
    private final MemberNames names;
    private final Phrases phrases;
    private final Words words;
    private final Shown shown;

    /**
     * What is cut.
     *
     * @param yarnId empty for a band
     * @param band what band; empty for a yarn
     */
    private record Stuff(Optional<String> yarnId, Optional<String> band) {
        static Stuff of(Yarn yarn) {
            return new Stuff(Optional.of(yarn.id()), Optional.empty());
        }

        static Stuff of(CutLine cut) {
            return cut.yarn().map(Stuff::of).orElseGet(() -> new Stuff(Optional.empty(), Optional.of(cut.what())));
        }
    }

    /** By what is cut, then the length, then what it is for: how many for each member. */
    private final Map<Stuff, Map<Long, Map<String, Map<Integer, Integer>>>> gathered = new LinkedHashMap<>();

    ClassCuts(WrittenClass written, MemberNames names, Phrases phrases, Words words) {
        this.written = written;
        this.plan = written.plan();
        this.names = names;
        this.phrases = phrases;
        this.words = words;
        this.shown = plan.set().piece().shown();
    }

    List<ClassSheet.Cuts> all() {
        for (int i = 0; i < plan.plans().size(); i++) {
            gather(i, plan.plans().get(i));
        }
        Piece piece = plan.set().withAllYarns();
        List<ClassSheet.Cuts> all = new ArrayList<>();
        for (Yarn yarn : piece.yarns()) {
            if (gathered.containsKey(Stuff.of(yarn))) {
                all.add(cuts(Optional.of(yarn), words.yarn(yarn), gathered.get(Stuff.of(yarn))));
            }
        }
        gathered.forEach((stuff, lengths) ->
                stuff.band().ifPresent(band -> all.add(cuts(Optional.empty(), band, lengths))));
        return all;
    }

    private void gather(int member, Plan one) {
        for (CutLine cut : written.loom(member).cuts()) {
            long length = Math.round(cut.mm() * SAME);
            gathered.computeIfAbsent(Stuff.of(cut), none -> new TreeMap<>(Collections.reverseOrder()))
                    .computeIfAbsent(length, none -> new LinkedHashMap<>())
                    .computeIfAbsent(cut.use(), none -> new LinkedHashMap<>())
                    .merge(member, cut.count(), Integer::sum);
        }
    }

    private ClassSheet.Cuts cuts(
            Optional<Yarn> yarn, String what, Map<Long, Map<String, Map<Integer, Integer>>> lengths) {
        List<ClassSheet.Line> lines = new ArrayList<>();
        lengths.forEach((length, uses) -> lines.addAll(lines(length / SAME, uses)));
        double total =
                lines.stream().mapToDouble(line -> line.count() * line.mm()).sum();
        String heading = phrases.say(
                "cuts.yarn",
                Map.of(
                        "yarn",
                        what,
                        "count",
                        lines.stream().mapToInt(ClassSheet.Line::count).sum(),
                        "length",
                        yarn.isPresent() ? shown.total(total) : shown.cut(total)));
        return new ClassSheet.Cuts(yarn, heading, lines);
    }

    /** Some of the looms that take equal lengths for one thing. */
    private record Share(int count, String text) {}

    private List<ClassSheet.Line> lines(double mm, Map<String, Map<Integer, Integer>> uses) {
        List<Share> shares = new ArrayList<>();
        uses.forEach((use, counts) -> shares.addAll(shares(use, counts)));
        List<ClassSheet.Line> lines = new ArrayList<>();
        List<Share> row = new ArrayList<>();
        int letters = 0;
        for (Share share : shares) {
            letters += share.text().length() + 2;
            if (letters > MOST_LETTERS && !row.isEmpty()) {
                lines.add(line(mm, row));
                row.clear();
                letters = share.text().length() + 2;
            }
            row.add(share);
        }
        lines.add(line(mm, row));
        return lines;
    }

    private ClassSheet.Line line(double mm, List<Share> shares) {
        return new ClassSheet.Line(
                shares.stream().mapToInt(Share::count).sum(),
                mm,
                shown.cut(mm),
                String.join("; ", shares.stream().map(Share::text).toList()));
    }

    private List<Share> shares(String use, Map<Integer, Integer> counts) {
        Map<Integer, List<Integer>> byCount = new TreeMap<>(Collections.reverseOrder());
        counts.forEach((member, count) ->
                byCount.computeIfAbsent(count, none -> new ArrayList<>()).add(member));
        List<Share> shares = new ArrayList<>();
        byCount.forEach((each, members) -> {
            for (MemberNames.Group group : names.groups(members)) {
                String text = phrases.say(
                        each == 1 ? "cuts.use" : "cuts.use.several",
                        Map.of("use", use, "each", each, "members", group.text()));
                shares.add(new Share(each * group.members().size(), text));
            }
        });
        return shares;
    }
}
