package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;
import thrumwright.block.Side;
import thrumwright.block.WarpLoops;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Budget;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.words.HeightWords;
import thrumwright.plan.words.Words;

/** Writes the chapters; steps are numbered through all of them. */
final class ChapterWriter {
    private final Plan plan;
    private final Piece piece;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;
    private final ShedWords sheds;
    private final BlockWords blockWords;
    private final PictureWords pictureWords;
    private final OwnWording ownWording;
    private final TopDifferences topDifferences;
    private final HeightWords heights;
    private int number;

    ChapterWriter(Plan plan, Phrases phrases, Words words, Locale locale) {
        this.plan = plan;
        this.piece = plan.piece();
        this.shown = piece.shown();
        this.phrases = phrases;
        this.words = words;
        this.sheds = new ShedWords(phrases, words);
        this.blockWords = new BlockWords(plan, phrases, words);
        this.pictureWords = new PictureWords(plan, phrases, words);
        this.ownWording = new OwnWording(plan, phrases, words);
        this.heights = new HeightWords(plan, phrases);
        this.topDifferences = new TopDifferences(plan, phrases, words, locale);
    }

    List<Chapter> chapters() {
        List<Chapter> chapters = new ArrayList<>();
        chapters.add(
                new Chapter(Chapter.Kind.START, phrases.say("chapter.start"), startOpening(), steps(plan.start())));
        chapters.add(design());
        chapters.add(new Chapter(Chapter.Kind.TOP, phrases.say("chapter.top"), topOpening(), topSteps()));
        List<Step> offLoom = new OffLoom(plan, phrases, words).steps(number);
        chapters.add(new Chapter(
                Chapter.Kind.OFF_LOOM,
                phrases.say("chapter.off-loom"),
                List.of(phrases.say(plan.closedWarp().isPresent() ? "off.opening.closed" : "off.opening")),
                offLoom));
        return chapters.stream().filter(chapter -> !chapter.steps().isEmpty()).toList();
    }

    private List<String> startOpening() {
        List<String> opening = new ArrayList<>();
        opening.add(phrases.say(
                plan.start().loops().isPresent() ? "start.opening.closed" : "start.opening",
                Map.of("clearance", heights.at(Place.START, plan.budget().clearance()))));
        plan.start()
                .finish()
                .filter(finish -> finish.needed() > 0)
                .ifPresent(finish -> opening.add(phrases.say(
                        finish.block().hangs() ? "start.keep-free" : "start.keep-free-ends",
                        Map.of("free", shown.cut(finish.needed())))));
        opening.add(phrases.say("caution.hands"));
        return opening;
    }

    private List<String> topOpening() {
        List<String> opening = new ArrayList<>();
        opening.add(phrases.say(
                plan.budget().closed() ? "top.opening.closed" : "top.opening",
                Map.of(
                        "stop", heights.at(Place.TOP, plan.budget().stopLine()),
                        "meets", lastMeets(),
                        "from", words.side(plan.afterDesign().side().other()),
                        "side", words.side(plan.afterDesign().side()))));
        if (!plan.budget().closed()) {
            opening.add(phrases.say(
                    "top.heights",
                    Map.of("ends", heights.at(Place.TOP, plan.budget().designEnds()))));
        }
        if (piece.design().lastShed().isEmpty() || piece.design().lastSide().isEmpty()) {
            opening.add(phrases.say("top.assumed"));
        }
        if (piece.top() instanceof Top.FollowsStart) {
            opening.add(phrases.say("top.backwards"));
        }
        opening.addAll(topDifferences.sentences());
        return opening;
    }

    private List<Step> steps(EndPlan end) {
        List<Step> steps = new ArrayList<>();
        for (BlockPlan block : end.blocks()) {
            // warp ends are finished off the loom; on the loom there is nothing to do for them, but for loops
            if (block.block().finish().map(EdgeFinish::closed).orElse(true)) {
                steps.add(step(end, block));
            }
        }
        return steps;
    }

    /** The top begins with a look at the design's last pick, from which it goes on. */
    private List<Step> topSteps() {
        if (plan.top().blocks().isEmpty()) {
            return List.of();
        }
        List<Step> steps = new ArrayList<>();
        steps.add(plain("end", List.of(said("design.end", Map.of()))));
        steps.addAll(steps(plan.top()));
        return steps;
    }

    private Step step(EndPlan end, BlockPlan block) {
        String key = Step.key(end.place(), block.block().id());
        String title = words.name(block.block());
        List<Sentence> own = Sentence.own(ownWording.sentences(end, block));
        Optional<Step.Picture> picture =
                Optional.of(new Step.Picture(end.place(), block.block().id(), pictureWords.step(end, block)));
        if (block.work().isPresent()) {
            return new Step(
                    key,
                    ++number,
                    block.block().family(),
                    title,
                    picture,
                    Optional.of(block.work().get().yarn()),
                    blockWords.take(block.work().get()),
                    own.isEmpty() ? blockWords.sentences(block.work().get()) : own,
                    blockWords.rows(block.work().get()),
                    reach(end, block),
                    heights.brief(end.place(), end.reach(block)),
                    blockWords.cautions(block.work().get()));
        }
        List<Sentence> sentences = withoutYarn(end, block);
        boolean open = block.height() > 0;
        return new Step(
                key,
                ++number,
                block.block().family(),
                title,
                picture,
                Optional.empty(),
                "",
                own.isEmpty() ? sentences : own,
                List.of(),
                open ? reach(end, block) : "",
                open ? heights.brief(end.place(), end.reach(block)) : "",
                List.of());
    }

    private List<Sentence> withoutYarn(EndPlan end, BlockPlan plan) {
        if (plan.block() instanceof WarpLoops loops) {
            return new LoopWords(this.plan, phrases, words).onLoom(end, loops);
        } else if (plan.fold().isPresent()) {
            return fold(end, plan.fold().get());
        }
        return List.of(said("open-warp.do", Map.of("height", shown.height(plan.height()))));
    }

    private List<Sentence> fold(EndPlan end, HemFold fold) {
        List<Sentence> sentences = new ArrayList<>();
        boolean onSoumak = end.hem().isPresent()
                && end.blocks().stream()
                        .noneMatch(block ->
                                Math.abs(block.bottom() - end.hem().get().foldLine()) < 1e-9);
        sentences.add(said(onSoumak ? "hem-fold.soumak" : "hem-fold.line", Map.of()));
        if (fold.mitred()) {
            sentences.add(said("hem-fold.mitred", Map.of()));
        }
        fold.band()
                .ifPresent(band -> sentences.add(said(
                        "hem-fold.faced",
                        Map.of("width", shown.height(band.width().mm())))));
        end.hem()
                .filter(hem -> hem.blockId().equals(fold.id()) && hem.folds())
                .ifPresent(hem -> sentences.add(said("hem-fold.depth", Map.of("depth", shown.height(hem.depth())))));
        return sentences;
    }

    private Sentence said(String key, Map<String, ?> values) {
        return Sentence.of(phrases, key, values);
    }

    private String reach(EndPlan end, BlockPlan block) {
        if (block.height() == 0) {
            return phrases.say("reach.flat");
        }
        return phrases.say(
                "reach",
                Map.of(
                        "height", shown.height(block.height()),
                        "reach", heights.at(end.place(), end.reach(block))));
    }

    private Chapter design() {
        Budget budget = plan.budget();
        List<Sentence> begin = new ArrayList<>();
        begin.add(said(
                "design.begin",
                Map.of(
                        "line", heights.at(Place.START, budget.startLine()),
                        "meets", nextMeets(),
                        "side", words.side(plan.start().after().side()),
                        "yarn", piece.stripe(Place.START).name())));
        if (budget.closed()) {
            begin.addAll(new LoopWords(plan, phrases, words).closing());
        }
        List<Sentence> stop = new ArrayList<>();
        stop.add(said(stopKey(), Map.of("line", heights.at(Place.TOP, budget.stopLine()))));
        if (budget.closed() && budget.left() >= 0) {
            stop.add(said(
                    "design.left.closed" + LoopWords.way(plan.top()), Map.of("left", shown.height(budget.left()))));
        } else if (budget.left() >= 0) {
            stop.add(said(
                    "design.left",
                    Map.of("ends", heights.at(Place.TOP, budget.designEnds()), "left", shown.height(budget.left()))));
        } else {
            stop.add(said("design.short", Map.of("short", shown.height(-budget.left()))));
        }
        return new Chapter(
                Chapter.Kind.DESIGN,
                phrases.say("chapter.design"),
                List.of(),
                List.of(plain("stop", stop), plain("begin", begin)));
    }

    private String stopKey() {
        if (plan.room().travels()) {
            return "design.stop.travels";
        }
        return plan.budget().closed() ? "design.stop.closed" : "design.stop";
    }

    private String nextMeets() {
        Course after = plan.start().after();
        int ends = piece.warp().ends();
        return sheds.meets(after.nextShed().meets(after.side(), ends), after.side());
    }

    private String lastMeets() {
        Side from = plan.afterDesign().side().other();
        int ends = piece.warp().ends();
        return sheds.meets(plan.afterDesign().lastShed().orElseThrow().meets(from, ends), from);
    }

    private Step plain(String key, List<Sentence> sentences) {
        return new Step(
                "design/" + key,
                ++number,
                "design",
                phrases.say("design." + key + ".title"),
                Optional.empty(),
                Optional.empty(),
                "",
                sentences,
                List.of(),
                "",
                "",
                List.of());
    }
}
