package thrumwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.ClassMember;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassFinding;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.words.FindingWords;
import thrumwright.plan.words.Words;

/** Writes the lists of a class from its plan. */
final class ClassSheetWriter {
    private final WrittenClass written;
    private final ClassPlan plan;
    private final Piece piece;
    private final Shown shown;
    private final Locale locale;
    private final Phrases phrases;
    private final MemberNames names;

    ClassSheetWriter(WrittenClass written) {
        this.written = written;
        this.plan = written.plan();
        this.piece = plan.set().piece();
        this.shown = piece.shown();
        this.locale = written.locale();
        this.phrases = Phrases.of("thrumwright.sheet.class", locale);
        this.names = MemberNames.of(plan.set(), locale);
    }

    ClassSheet sheet() {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(phrases.say("piece"), piece.title()));
        facts.add(new Fact(phrases.say("looms"), Integer.toString(plan.plans().size())));
        List<String> columns = new ArrayList<>(List.of(phrases.say("column.number"), phrases.say("column.name")));
        List<List<String>> looms = new ArrayList<>();
        for (int i = 0; i < plan.plans().size(); i++) {
            looms.add(new ArrayList<>(List.of(Integer.toString(i + 1), names.name(i))));
        }
        columns().forEach((key, value) -> {
            List<String> values = plan.plans().stream()
                    .map(value)
                    .map(ClassSheetWriter::brief)
                    .toList();
            if (values.stream().distinct().count() > 1) {
                columns.add(phrases.say("column." + key));
                for (int i = 0; i < values.size(); i++) {
                    looms.get(i).add(values.get(i));
                }
            } else if (!values.get(0).isBlank()) {
                facts.add(new Fact(phrases.say("column." + key), values.get(0)));
            }
        });
        Phrases steps = Phrases.of("thrumwright.sheet.steps", locale);
        Words words = new Words(locale);
        YarnLines yarns = new YarnLines(piece, steps, words);
        return new ClassSheet(
                ClassSheet.title(plan.set(), locale),
                facts,
                findings(),
                Stream.concat(
                                plan.totals().stream().map(total -> yarns.line(total, plan.plans(), true)),
                                yarns.bands(plan.plans()).stream())
                        .toList(),
                yarns.design(plan.plans()),
                SheetWriter.cutNote(plan.plans(), steps),
                new ClassCuts(written, names, phrases, words).all(),
                columns,
                looms);
    }

    private List<String> findings() {
        List<String> findings = new ArrayList<>();
        FindingWords words = FindingWords.of(piece, locale);
        for (ClassFinding each : words.of(plan)) {
            findings.addAll(names.said(each.members(), words.say(each.finding())));
        }
        return findings;
    }

    /** Short enough for a cell of a table. */
    private static String brief(String text) {
        return text.length() <= ClassMember.LONGEST_NAME ? text : text.substring(0, ClassMember.LONGEST_NAME) + "…";
    }

    /** What may differ from loom to loom, by the keys of its columns. */
    private Map<String, Function<Plan, String>> columns() {
        Map<String, Function<Plan, String>> columns = new LinkedHashMap<>();
        columns.put("loom", one -> one.piece().loom().name());
        columns.put("width", one -> shown.height(one.finishedWidth()));
        columns.put(
                "sett",
                one -> one.piece().shown().typed(one.piece().warp().sett().text()));
        columns.put("ends", one -> Integer.toString(one.piece().warp().ends()));
        columns.put("posts", one -> posts(one.piece().loom()));
        columns.put("open", one -> height(one.piece().loom().open()));
        columns.put("per-end", one -> shown.cut(one.room().perEnd()));
        columns.put("warp", one -> shown.total(one.warpYarn()));
        columns.put("begins", one -> shown.height(one.budget().startLine()));
        columns.put("stops", one -> shown.height(one.budget().stopLine()));
        columns.put("first", one -> one.piece().stripe(Place.START).name());
        columns.put("last", one -> one.piece().stripe(Place.TOP).name());
        columns.put(
                "size",
                one -> phrases.say(
                        "size",
                        Map.of(
                                "width", shown.height(one.finishedWidth()),
                                "height", shown.height(one.finishedHeight()))));
        return columns;
    }

    private String posts(Loom loom) {
        return loom.uprights()
                .map(posts ->
                        phrases.say("posts", Map.of("diameter", height(posts.diameter()), "gap", height(posts.gap()))))
                .orElseGet(() -> phrases.say("posts.none"));
    }

    private String height(Length length) {
        return shown.height(length.mm());
    }
}
