package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.block.Material;
import thrumwright.block.TakesYarn;
import thrumwright.measure.Decimals;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Warp;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Butterflies;
import thrumwright.plan.Cut;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.SewnBand;
import thrumwright.plan.SewnCord;
import thrumwright.plan.Work;
import thrumwright.plan.Wrapping;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.FindingWords;
import thrumwright.plan.words.HeightWords;
import thrumwright.plan.words.Words;
import thrumwright.yarn.Yarn;

/** Writes a sheet from a plan: first the chapters, then the lists that refer to their steps. */
final class SheetWriter {
    private final Plan plan;
    private final Optional<String> name;
    private final Piece piece;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;
    private final Locale locale;

    SheetWriter(Plan plan, Optional<String> name, Locale locale) {
        this.plan = plan;
        this.name = name;
        this.piece = plan.piece();
        this.shown = piece.shown();
        this.phrases = Phrases.of("thrumwright.sheet.steps", locale);
        this.words = new Words(locale);
        this.locale = locale;
    }

    StepSheet sheet() {
        List<Chapter> chapters = new ChapterWriter(plan, phrases, words, locale).chapters();
        return new StepSheet(
                piece.title(),
                name,
                facts(),
                findings(),
                cutNote(),
                cuts(chapters),
                new YarnLines(piece, phrases, words).design(List.of(plan)),
                yarns(),
                chapters);
    }

    /** What another weaver has whose plan is the very same: only what tells whose it is differs. */
    StepSheet like(StepSheet other) {
        return new StepSheet(
                other.title(),
                name,
                facts(),
                other.findings(),
                other.cutNote(),
                other.cuts(),
                other.yarnNote(),
                other.yarns(),
                other.chapters());
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        name.ifPresent(whose -> facts.add(fact("name", whose.isBlank() ? phrases.say("name.blank") : whose)));
        if (!piece.loom().name().isBlank()) {
            facts.add(fact("loom", piece.loom().name()));
        }
        warp(facts);
        facts.add(fact(
                "size",
                phrases.say(
                        "fact.size.value",
                        Map.of(
                                "width", shown.height(plan.finishedWidth()),
                                "height", shown.height(plan.finishedHeight())))));
        facts.add(fact("assumed", assumed()));
        hemFact(facts, plan.start(), "hem.start");
        hemFact(facts, plan.top(), "hem.top");
        facts.add(lines());
        if (!piece.note().isBlank()) {
            facts.add(fact("note", piece.note()));
        }
        return facts;
    }

    /** Where the design begins, and by where it must end. */
    private Fact lines() {
        HeightWords heights = new HeightWords(plan, phrases);
        double start = plan.budget().startLine();
        double stop = plan.budget().stopLine();
        if (plan.room().travels()) {
            return fact(
                    "lines.travels",
                    phrases.say(
                            "fact.lines.value.travels",
                            Map.of("start", heights.at(Place.START, start), "stop", heights.at(Place.TOP, stop))));
        }
        return new Fact(
                phrases.say("fact.lines", Map.of("from", heights.from(Place.START))),
                phrases.say(
                        plan.budget().closed() ? "fact.lines.value.closed" : "fact.lines.value",
                        Map.of("start", shown.height(start), "stop", shown.height(stop))));
    }

    private void warp(List<Fact> facts) {
        facts.add(fact(
                "warp",
                phrases.say(
                        "fact.warp.value",
                        Map.of(
                                "ends", piece.warp().ends(),
                                "yarn", piece.warpYarn().name(),
                                "sett", piece.shown().typed(piece.warp().sett().text()),
                                "width", shown.cut(piece.warp().nominalWidth())))));
        piece.warp()
                .woven()
                .filter(woven -> piece.warp().wovenLikely())
                .ifPresent(woven -> facts.add(fact("draw-in", drawnIn(woven))));
    }

    private String drawnIn(Length woven) {
        double drawn = piece.warp().drawIn();
        return phrases.say(
                drawn < 0 ? "fact.draw-in.value.wider" : "fact.draw-in.value",
                Map.of("woven", shown.cut(woven.mm()), "share", shown.decimals(100 * Math.abs(drawn), 1)));
    }

    /** What the finished size goes by. */
    private String assumed() {
        double relaxing = piece.design().relaxing();
        Map<String, Object> values = Map.of(
                "usual", shown.height(piece.warp().usualWidth()),
                "draw", shown.decimals(100 * Warp.USUAL_DRAW_IN, 0),
                "share", shown.decimals(100 * relaxing, 1));
        String width = piece.warp().wovenKnown() ? "fact.assumed.width.measured" : "fact.assumed.width.usual";
        String height = relaxing > 0 ? "fact.assumed.height.relaxing" : "fact.assumed.height.none";
        return phrases.say(
                "fact.assumed.value",
                Map.of("width", phrases.say(width, values), "height", phrases.say(height, values)));
    }

    private void hemFact(List<Fact> facts, EndPlan end, String key) {
        end.hem().filter(Hem::folds).map(Hem::depth).map(shown::height).ifPresent(depth -> facts.add(fact(key, depth)));
    }

    private Fact fact(String key, String value) {
        return new Fact(phrases.say("fact." + key), value);
    }

    private List<String> findings() {
        return Findings.of(plan).all().stream()
                .map(new FindingWords(locale, shown)::say)
                .toList();
    }

    private String cutNote() {
        String note = cutNote(List.of(plan), phrases);
        return plan.closedWarp().isEmpty()
                ? note
                : phrases.say(
                        "cut.note.warp",
                        Map.of(
                                "note", note,
                                "length", shown.total(plan.warpYarn()),
                                "yarn", piece.warpYarn().name()));
    }

    /** What all cuts of some pieces of the same habits include. */
    static String cutNote(List<Plan> plans, Phrases phrases) {
        Piece piece = plans.get(0).piece();
        Shown shown = piece.shown();
        boolean tied = plans.stream().anyMatch(SheetWriter::ties);
        String note = phrases.say(
                tied ? "cut.note.tied" : "cut.note",
                Map.of(
                        "tail", shown.cut(piece.habits().tail().mm()),
                        "tie", shown.cut(piece.habits().tie().mm())));
        return plans.stream().anyMatch(SheetWriter::winds) ? phrases.say("cut.note.wound", Map.of("note", note)) : note;
    }

    /** Whether something of it is cut from a bundle. */
    private static boolean winds(Plan plan) {
        return plan.sewnCord().flatMap(cord -> cord.yarn().bundle()).isPresent()
                || plan.piece().yarns().stream()
                        .filter(yarn -> yarn.bundle().isPresent())
                        .anyMatch(yarn -> plan.start().cut(yarn) + plan.top().cut(yarn) > 0);
    }

    private static boolean ties(Plan plan) {
        return Stream.of(plan.start(), plan.top())
                .flatMap(end -> end.blocks().stream())
                .flatMap(block -> block.work().stream())
                .anyMatch(work -> work.block().tied());
    }

    private List<CutLine> cuts(List<Chapter> chapters) {
        List<CutLine> cuts = new ArrayList<>();
        for (Chapter chapter : chapters) {
            for (Step step : chapter.steps()) {
                step.picture()
                        .filter(picture -> !step.take().isEmpty())
                        .ifPresent(picture -> addCuts(cuts, picture, step.number()));
                Sewn.of(step.kind())
                        .filter(Sewn.CORD::equals)
                        .ifPresent(sewn -> cuts.add(cut(plan.sewnCord().orElseThrow(), step.number())));
            }
        }
        return cuts;
    }

    private void addCuts(List<CutLine> cuts, Step.Picture picture, int step) {
        EndPlan end = plan.end(picture.place());
        end.block(picture.blockId())
                .flatMap(BlockPlan::work)
                .ifPresent(work -> work.toCut().ifPresent(cut -> cuts.add(cut(picture.place(), work, cut, step))));
        end.finish()
                .filter(finish -> finish.block().id().equals(picture.blockId()))
                .flatMap(finish -> finish.wrapping().map(wrapping -> cut(picture.place(), finish, wrapping, step)))
                .ifPresent(cuts::add);
        end.band(picture.blockId())
                .ifPresent(band -> cuts.add(cut(
                        picture,
                        words.name(end.block(picture.blockId()).orElseThrow().block()),
                        band,
                        step)));
    }

    private CutLine cut(Step.Picture picture, String use, SewnBand band, int step) {
        return new CutLine(
                picture.place(),
                picture.blockId(),
                Optional.empty(),
                words.band(band.width(), band.thickness(), shown),
                "",
                "",
                use,
                step,
                1,
                band.length(),
                shown.cut(band.length()),
                "",
                phrases.say("cut.turned-in", Map.of("in", shown.height(SewnBand.TURNED_IN))));
    }

    private CutLine cut(Place place, Finish finish, Wrapping wrapping, int step) {
        return new CutLine(
                place,
                finish.block().id(),
                Optional.of(wrapping.yarn()),
                wrapping.yarn().name(),
                strands(wrapping.yarn()),
                finish.block().takesYarn().map(this::role).orElse(""),
                words.name(finish.block()),
                step,
                wrapping.count(),
                wrapping.each().length(),
                shown.cut(wrapping.each().length()),
                shown.halves(wrapping.each().widths()),
                eachStrand(wrapping.yarn(), wrapping.each().length()).orElse(""));
    }

    private CutLine cut(Place place, Work work, Cut cut, int step) {
        Butterflies butterflies = cut.butterflies();
        int lengths = work.block().lengths(work.setting());
        String alone = work.block().inParts() ? "cut.parts" : "cut.strands";
        String together = butterflies.count() == lengths ? alone : "cut.shared";
        Optional<String> shared = butterflies.count() == 1
                ? Optional.empty()
                : Optional.of(phrases.say(together, Map.of("length", shown.cut(cut.length()))));
        double each = butterflies.count() == 1 ? cut.length() : butterflies.each();
        double widths = butterflies.count() == 1 ? cut.widths() : Decimals.roundedUp(each / piece.reference(), 0.5);
        return new CutLine(
                place,
                work.block().id(),
                Optional.of(work.yarn()),
                work.yarn().name(),
                strands(work.yarn()),
                role(work.block()),
                new LengthWords(phrases, words).all(work),
                step,
                butterflies.count(),
                each,
                shown.cut(each),
                shown.halves(widths),
                Stream.concat(eachStrand(work.yarn(), each).stream(), shared.stream())
                        .collect(Collectors.joining("; ")));
    }

    private CutLine cut(SewnCord cord, int step) {
        return new CutLine(
                Place.START,
                "",
                Optional.of(cord.yarn()),
                cord.yarn().name(),
                strands(cord.yarn()),
                "",
                phrases.say("cut.edge-cord", Map.of("count", cord.count())),
                step,
                cord.count() * cord.strands(),
                cord.strand(),
                shown.cut(cord.strand()),
                shown.halves(Decimals.roundedUp(cord.strand() / piece.reference(), 0.5)),
                Stream.concat(
                                eachStrand(cord.yarn(), cord.strand()).stream(),
                                Stream.of(phrases.say("cut.knots", Map.of("knots", shown.cut(SewnCord.KNOTS)))))
                        .collect(Collectors.joining("; ")));
    }

    private String strands(Yarn yarn) {
        return yarn.bundle().map(words::strands).orElse("");
    }

    /** “5 strands of Silt, each 2.40 m”, of a bundle. */
    private Optional<String> eachStrand(Yarn yarn, double mm) {
        return yarn.bundle().map(bundle -> {
            String key = bundle.strands() == 1 ? "cut.strand" : "cut.each-strand";
            return phrases.say(key, Map.of("strands", words.strands(bundle), "length", shown.cut(mm)));
        });
    }

    private String role(TakesYarn block) {
        return block.use().material() instanceof Material.OfRole part ? phrases.say("role." + part.role()) : "";
    }

    private List<YarnLine> yarns() {
        YarnLines lines = new YarnLines(piece, phrases, words);
        List<Plan> one = List.of(plan);
        return Stream.concat(
                        plan.totals().stream().map(total -> lines.line(total, one, name.isEmpty())),
                        lines.bands(one).stream())
                .toList();
    }
}
