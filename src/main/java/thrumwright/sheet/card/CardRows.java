package thrumwright.sheet.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Work;
import thrumwright.sheet.Chapter;
import thrumwright.sheet.CutLine;
import thrumwright.sheet.OwnWording;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;

/** Writes the rows of a card: the blocks as they stand in the plan, with the numbers and words of their steps. */
final class CardRows {
    /** So many signs of a weaver's own words find room on a card. */
    private static final int MOST_OWN = 120;

    private final CardVoice voice;
    private final Phrases phrases;
    private final StepSheet sheet;
    private final EndPlan end;
    private final YarnLetters letters;
    private final LargeWords large;
    private final CardDifferences differences;

    CardRows(CardVoice voice, StepSheet sheet, EndPlan end, CardDifferences differences) {
        this.voice = voice;
        this.phrases = voice.phrases();
        this.sheet = sheet;
        this.end = end;
        this.letters = YarnLetters.of(voice.plan().piece());
        this.large = new LargeWords(voice, end);
        this.differences = differences;
    }

    /** Of all blocks that a step is about: a second fringe comes to nothing. */
    List<CardRow> rows() {
        return end.blocks().stream()
                .flatMap(block -> step(block.block().id()).map(step -> row(block, step)).stream())
                .toList();
    }

    private CardRow row(BlockPlan block, Step step) {
        Optional<Work> work = block.work();
        return new CardRow(
                step.number(),
                block,
                voice.words().name(block.block()),
                work.map(one -> CardWay.of(voice, one, step.rows())).orElse(List.of()),
                block.block().of(large),
                work.map(one -> one.rows().size()).orElse(0),
                voice.plan().piece().ticks().done(step.key()),
                work.map(this::count),
                reach(block),
                cut(block.block().id()).or(() -> work.flatMap(this::goesOn)),
                notes(block, step),
                step.picture().map(Step.Picture::says).orElse(""));
    }

    /** The step of its own end; for what is done off the loom the step there. */
    private Optional<Step> step(String id) {
        return step(id, true).or(() -> step(id, false));
    }

    private Optional<Step> step(String id, boolean onLoom) {
        return sheet.chapters().stream()
                .filter(chapter -> (chapter.kind() != Chapter.Kind.OFF_LOOM) == onLoom)
                .flatMap(chapter -> chapter.steps().stream())
                .filter(step -> step.picture()
                        .filter(shown -> isHere(shown.place(), shown.blockId(), id))
                        .isPresent())
                .findFirst();
    }

    private boolean isHere(Place place, String blockId, String id) {
        return place == end.place() && blockId.equals(id);
    }

    private CardSaying count(Work work) {
        int rows = work.rows().size();
        String key = work.block().plainWeave() ? "count.picks" : "count.rows";
        return new CardSaying(phrases.say("count", Map.of("count", rows)), phrases.say(key, Map.of("count", rows)));
    }

    private Optional<CardSaying> reach(BlockPlan block) {
        if (block.height() == 0) {
            return Optional.empty();
        }
        double line = end.reach(block);
        return Optional.of(new CardSaying(
                phrases.say("up", Map.of("height", voice.figures(end.place(), line))),
                phrases.say("reach.says", Map.of("height", voice.above(end.place(), line)))));
    }

    private Optional<CardCut> cut(String id) {
        return sheet.cuts().stream()
                .filter(cut -> isHere(cut.place(), cut.blockId(), id))
                .findFirst()
                .map(this::cut);
    }

    private CardCut cut(CutLine cut) {
        Map<String, Object> values = Map.of(
                "count", cut.count(),
                "length", cut.length(),
                "widths", cut.widths(),
                "of", phrases.say(widthsOf(voice.plan().piece())));
        String length =
                cut.widths().isEmpty() ? cut.length() : phrases.say(cut.count() == 1 ? "cut" : "cut.several", values);
        return new CardCut(cut.yarn(), cut.yarn().map(letters::letter).orElse(""), cut.what(), length);
    }

    /** Of a block that is woven with the yarn of one before it. */
    private Optional<CardCut> goesOn(Work work) {
        return work.oneLength().before().flatMap(before -> step(before.id())).map(before -> {
            String says = phrases.say("cut.goes-on", Map.of("step", before.number()));
            return new CardCut(
                    Optional.of(work.yarn()),
                    letters.letter(work.yarn()),
                    work.yarn().name(),
                    says);
        });
    }

    /** What is to be left hanging for the block after it. */
    private Optional<String> ledOn(Work work) {
        return work.oneLength().after().stream()
                .findFirst()
                .flatMap(after -> step(after.id()))
                .map(after -> phrases.say("led-on", Map.of("step", after.number())));
    }

    /** The key of the words for what widths are counted by. */
    private static String widthsOf(Piece piece) {
        return piece.countsInLoomWidths() ? "of.loom" : "of.warp";
    }

    private List<String> notes(BlockPlan block, Step step) {
        List<String> notes = new ArrayList<>();
        List<String> own = new OwnWording(voice.plan(), voice.locale()).sentences(end, block);
        if (own.isEmpty()) {
            way(block.block()).ifPresent(notes::add);
        } else {
            notes.add(own(String.join(" ", own)));
        }
        block.work().flatMap(this::ledOn).ifPresent(notes::add);
        if (block.comesOut()) {
            notes.add(phrases.say("comes-out"));
        }
        if (end.place() == Place.TOP) {
            notes.addAll(differences.of(block));
        }
        if (block.work().isPresent()) {
            notes.addAll(step.cautions());
        }
        return notes;
    }

    /** The weaver's own words for a step, which the booklet has too; the longer ones only there. */
    private String own(String words) {
        return words.length() <= MOST_OWN ? words : phrases.say("own");
    }

    /** How it is worked, if that isn't told by its name. */
    private Optional<String> way(Block block) {
        Map<String, Object> counts = new HashMap<>();
        block.woven().ifPresent(woven -> counts.putAll(woven.counts()));
        boolean off = block.finish().filter(finish -> !finish.closed()).isPresent();
        String key = "card." + (off ? "finish" : block.key()) + ".way";
        boolean known = phrases.has(key) && !Integer.valueOf(1).equals(counts.get("group"));
        return known ? Optional.of(phrases.say(key, counts)) : Optional.empty();
    }
}
