package thrumwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Wrapping;
import thrumwright.plan.words.Words;
import thrumwright.yarn.Yarn;

/** What happens once the weaving is done: cut, take out, finish the ends, fold, stitch, hang. */
final class OffLoom {
    /** Warp to leave beyond an edge whose ends are darned into a hem, mm (from memory). */
    private static final double DARN = 50;
    /** What is left beyond knots inside a hem, mm (common practice, no source). */
    private static final double TRIMMED = 10;

    private final Plan plan;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;
    private final PictureWords pictureWords;
    private final OwnWording ownWording;
    private final List<Step> steps = new ArrayList<>();
    private int number;

    /** What a step is known by, what it is alike to, and what it is called. */
    private record Named(String key, String kind, String title) {}

    OffLoom(Plan plan, Phrases phrases, Words words) {
        this.plan = plan;
        this.shown = plan.piece().shown();
        this.phrases = phrases;
        this.words = words;
        this.pictureWords = new PictureWords(plan, phrases, words);
        this.ownWording = new OwnWording(plan, phrases, words);
    }

    /** @param before the number of the last step so far */
    List<Step> steps(int before) {
        number = before;
        cut();
        List<EndPlan> ends = Stream.of(plan.top(), plan.start())
                .filter(end -> !end.blocks().isEmpty())
                .toList();
        ends.forEach(this::end);
        List<Sentence> tails = new TailWords(plan, phrases, words).sentences();
        if (!tails.isEmpty()) {
            steps.add(step(
                    new Named(Step.offLoom("tails"), "off.tails", phrases.say("off.tails.title")),
                    Optional.empty(),
                    Optional.empty(),
                    "",
                    tails,
                    List.of("caution.needles", "caution.blades")));
        }
        BlockingWords blocking = new BlockingWords(plan);
        addTitled(Step.offLoom("block"), "off.block", blocking.values(), blocking.keys(), List.of("caution.steam"));
        for (EndPlan end : ends) {
            end.hem().filter(Hem::folds).ifPresent(hem -> hem(end, hem));
        }
        for (SewnOnWords.Told sewn : new SewnOnWords(plan, phrases).steps()) {
            addTitled(Step.offLoom(sewn.key()), sewn.titleKey(), sewn.values(), sewn.keys(), sewn.cautions());
        }
        DestinyWords destiny = new DestinyWords(plan, phrases, words);
        addTitled(Step.offLoom("last"), destiny.titleKey(), destiny.values(), destiny.keys(), destiny.cautions());
        return steps;
    }

    private void cut() {
        if (plan.closedWarp().isPresent()) {
            List<String> keys = lifting();
            addTitled(
                    Step.offLoom("lift"),
                    "off.lift",
                    Map.of(),
                    keys,
                    keys.contains("off.lift.linked") ? List.of("caution.blades") : List.of());
            return;
        }
        List<Sentence> sentences = new ArrayList<>();
        tied().ifPresent(name -> sentences.add(Sentence.of(phrases, "off.cut.untie", Map.of("tied", name))));
        sentences.addAll(whereToCut());
        List<EndPlan> atBars = plan.room().endless() ? List.of() : List.of(plan.top(), plan.start());
        for (EndPlan end : atBars) {
            end.finish()
                    .filter(finish -> end.loops().isEmpty() && finish.free() < finish.needed())
                    .ifPresent(finish -> sentences.add(Sentence.of(
                            phrases,
                            "off.cut.short",
                            Map.of(
                                    "place", words.place(end.place()),
                                    "free", shown.height(Math.max(0, finish.free())),
                                    "needed", shown.cut(finish.needed())))));
        }
        steps.add(step(
                new Named(Step.offLoom("cut"), "off.cut", phrases.say("off.cut.title")),
                Optional.empty(),
                Optional.empty(),
                "",
                sentences,
                List.of("caution.blades", "caution.small-children")));
    }

    /** The cord that is tied to the loom. */
    private Optional<String> tied() {
        return plan.start().blocks().stream()
                .filter(block ->
                        block.work().filter(work -> work.block().tied()).isPresent())
                .map(block -> words.name(block.block()).toLowerCase(Locale.ROOT))
                .findFirst();
    }

    /** Loops are lifted off nails before anything else; what else they lie round is unlashed and comes along, a linked warp is cut. */
    private List<String> lifting() {
        List<String> keys = new ArrayList<>();
        List<EndPlan> ends = List.of(plan.start(), plan.top());
        long nails = ends.stream().filter(LoopWords::onNails).count();
        long linked = ends.stream().filter(LoopWords::linked).count();
        if (nails > 0) {
            keys.add("off.lift.nails");
        }
        if (linked > 0) {
            keys.add("off.lift.linked");
        }
        if (nails + linked < 2) {
            keys.add(nails + linked == 1 ? "off.lift.closed-one" : "off.lift.closed");
        }
        keys.add(nails == 2 ? "off.lift.lay" : "off.lift.flat");
        return keys;
    }

    /** With loops at one end, at the other only. */
    private List<Sentence> whereToCut() {
        Map<String, Object> values = Map.of("below", free(plan.start()), "above", free(plan.top()));
        if (plan.start().loops().isPresent()) {
            return sentences(List.of("off.cut.top-only", "off.cut.few"), values);
        } else if (plan.top().loops().isPresent()) {
            return sentences(List.of("off.cut.start-only", "off.cut.few"), values);
        }
        if (plan.room().endless()) {
            return sentences(List.of("off.cut.round", "off.cut.few"), round(values));
        }
        String kind = "off.cut." + plan.piece().loom().kind().key();
        if (phrases.has(kind)) {
            return sentences(List.of(kind, "off.cut.few"), values);
        }
        return sentences(List.of("off.cut.where", "off.cut.order", "off.cut.few"), values);
    }

    /** One cut parts all that is free between both edges: what neither end needs is shared. */
    private Map<String, Object> round(Map<String, Object> values) {
        Map<String, Object> round = new HashMap<>(values);
        double above = needed(plan.top());
        double spare = plan.freeRound() - above - needed(plan.start());
        round.put("all", shown.cut(Math.max(0, plan.freeRound())));
        round.put("cut", shown.height(Math.max(0, above + spare / 2)));
        return round;
    }

    private static double needed(EndPlan end) {
        return end.finish().map(Finish::needed).orElse(EdgeFinish.HANDS);
    }

    /** What a finish needs; for a hem what the hands like, as far as the loom leaves it. */
    private String free(EndPlan end) {
        double free = Math.max(0, end.free());
        String liked = free < EdgeFinish.HANDS ? shown.height(free) : shown.cut(EdgeFinish.HANDS);
        return end.finish().map(Finish::needed).map(shown::cut).orElse(liked);
    }

    private void end(EndPlan end) {
        Map<String, Object> values = new HashMap<>();
        values.put("place", words.place(end.place()));
        values.put("darn", shown.height(DARN));
        // what lies inside a hem must not reach beyond its fold, or out of its first turn
        double inside =
                end.hem().map(hem -> hem.firstTurn().orElse(hem.cloth() / 2)).orElse(TRIMMED);
        values.put("trim", shown.height(Math.min(TRIMMED, inside)));
        values.put("out", names(comingOut(end)));
        if (end.finish().isPresent()) {
            finish(end, end.finish().get(), values);
        } else {
            List<String> keys =
                    new ArrayList<>(endsKeys(end, plan.piece().warp().ends()));
            end.hem().flatMap(Hem::band).ifPresent(band -> values.put("ends", shown.height(band.ends())));
            out(end, "off.ends.out").ifPresent(key -> keys.add(0, key));
            addTitled(Step.offLoom("ends", end.place()), "off.ends", values, keys, endsCautions(keys));
        }
    }

    /** @param ends of the warp; few are knotted all together */
    private static List<String> endsKeys(EndPlan end, int ends) {
        if (end.hem().flatMap(Hem::band).isPresent()) {
            return List.of("off.ends.band");
        }
        if (end.hem().isEmpty()) {
            return List.of("off.ends.darn-open", "off.ends.trim-open", "off.ends.darning");
        }
        String within = end.hem().get().firstTurn().isPresent() ? "off.ends.turned-in" : "off.ends.trim";
        return List.of(ends < 4 ? "off.ends.knot-all" : "off.ends.knot", within, "off.ends.else", "off.ends.darning");
    }

    private static List<String> endsCautions(List<String> keys) {
        return List.of(keys.contains("off.ends.darn-open") ? "caution.needles" : "caution.blades");
    }

    /** What comes out, the outermost first: the waste next to the edge protects it to the last. */
    private static List<Block> comingOut(EndPlan end) {
        List<Block> out = new ArrayList<>();
        end.blocks().stream().filter(BlockPlan::comesOut).forEach(plan -> out.add(plan.block()));
        if (end.place() == Place.TOP) {
            Collections.reverse(out);
        }
        return out;
    }

    private String names(List<Block> blocks) {
        return blocks.stream()
                .map(block -> words.name(block).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(phrases.say("list.then")));
    }

    /** The key for what comes out, if there is any; a cord or a header alone leaves nothing that could slip. */
    private static Optional<String> out(EndPlan end, String key) {
        List<Block> out = comingOut(end);
        if (out.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(out.get(out.size() - 1).startOnly() ? "off.out-only" : key);
    }

    private void finish(EndPlan end, Finish finish, Map<String, Object> values) {
        FinishWords told = new FinishWords(shown, phrases, words);
        values.putAll(told.values(finish));
        EdgeFinish block = finish.block();
        List<Sentence> sentences = new ArrayList<>();
        out(end, "off.finish.out").ifPresent(key -> sentences.add(Sentence.of(phrases, key, values)));
        // own words say how to make the finish; that the waste comes out, and when, isn't theirs to forget
        List<Sentence> own = end.block(block.id())
                .map(plan -> Sentence.own(ownWording.sentences(end, plan)))
                .orElse(List.of());
        if (end.loops().isPresent()) {
            // own words of loops are for the loom
            sentences.addAll(
                    new LoopWords(plan, phrases, words).offLoom(end, end.loops().get()));
        } else {
            sentences.addAll(own.isEmpty() ? sentences(FinishWords.keys(finish, end.hem()), values) : own);
        }
        steps.add(step(
                new Named(
                        Step.offLoom("finish", end.place()),
                        "off." + block.key(),
                        phrases.say(
                                "off.finish.title",
                                Map.of("block", words.name(block), "place", words.place(end.place())))),
                picture(end, block.id()),
                finish.wrapping().map(Wrapping::yarn),
                told.take(finish),
                sentences,
                told.cautions(block, end.hem())));
    }

    private void hem(EndPlan end, Hem hem) {
        HemWords told = new HemWords(plan, shown, phrases, words);
        Map<String, Object> values = told.values(end, hem);
        steps.add(step(
                new Named(
                        Step.offLoom("hem", end.place()),
                        "off.hem",
                        phrases.say(hem.band().isPresent() ? "off.band.title" : "off.hem.title", values)),
                picture(end, hem.blockId()),
                Optional.empty(),
                hem.band().isPresent() ? phrases.say("off.band.take", values) : "",
                sentences(told.keys(end, hem), values),
                List.of("caution.needles")));
    }

    private Optional<Step.Picture> picture(EndPlan end, String blockId) {
        return end.block(blockId).map(block -> new Step.Picture(end.place(), blockId, pictureWords.step(end, block)));
    }

    private void addTitled(
            String key, String titleKey, Map<String, Object> values, List<String> keys, List<String> cautions) {
        steps.add(step(
                new Named(key, titleKey, phrases.say(titleKey + ".title", values)),
                Optional.empty(),
                Optional.empty(),
                "",
                sentences(keys, values),
                cautions));
    }

    private List<Sentence> sentences(List<String> keys, Map<String, Object> values) {
        return keys.stream().map(key -> Sentence.of(phrases, key, values)).toList();
    }

    private Step step(
            Named named,
            Optional<Step.Picture> picture,
            Optional<Yarn> yarn,
            String take,
            List<Sentence> sentences,
            List<String> cautions) {
        return new Step(
                named.key(),
                ++number,
                named.kind(),
                named.title(),
                picture,
                yarn,
                take,
                sentences,
                List.of(),
                "",
                "",
                cautions.stream().map(phrases::say).toList());
    }
}
