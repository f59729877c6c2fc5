package thrumwright.sheet;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.KnotRows;
import thrumwright.block.OwnWords;
import thrumwright.block.Row;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.Wrapping;
import thrumwright.plan.words.Words;

/** A block's own wording, its places filled in from the plan. */
public final class OwnWording {
    private final Plan plan;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;

    public OwnWording(Plan plan, Locale locale) {
        this(plan, Phrases.of("thrumwright.sheet.steps", locale), new Words(locale));
    }

    OwnWording(Plan plan, Phrases phrases, Words words) {
        this.plan = plan;
        this.shown = plan.piece().shown();
        this.phrases = phrases;
        this.words = words;
    }

    /** The sentences of a block's own wording, one for each line; none if it has no wording of its own. */
    public List<String> sentences(EndPlan end, BlockPlan block) {
        return fill(block.block().tag().words(), end, block);
    }

    /** As {@link #sentences}, for a wording that the block doesn't have yet. */
    public List<String> fill(String wording, EndPlan end, BlockPlan block) {
        if (wording.isBlank()) {
            return List.of();
        }
        Map<String, Object> values = values(end, block);
        return wording.lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .map(line -> Phrases.fill(line, values))
                .toList();
    }

    /** What stands in each of {@link thrumwright.block.OwnWords#places}. */
    private Map<String, Object> values(EndPlan end, BlockPlan plan) {
        Block block = plan.block();
        Map<String, Object> values = new HashMap<>();
        values.put("block", words.name(block));
        values.put("place", words.place(end.place()));
        values.put("height", shown.height(plan.height()));
        values.put("reach", shown.height(this.plan.above(end.place(), end.reach(plan))));
        plan.work().ifPresent(work -> work(work, values));
        hem(end.hem(), values);
        if (block instanceof EdgeFinish finish) {
            finish(finish(end, finish), end, values);
        }
        return values;
    }

    private void work(Work work, Map<String, Object> values) {
        values.put("yarn", work.yarn().name());
        values.put("cut", shown.cut(work.oneLength().cut().length()));
        values.put("widths", shown.halves(work.oneLength().cut().widths()));
        values.put("pieces", work.oneLength().cut().butterflies().count());
        values.put("rows", work.rows().size());
        values.put("picks", work.rows().size());
        values.put("side", words.side(work.begins()));
        values.put("otherSide", words.side(work.begins().other()));
        values.put("endSide", words.side(work.ends()));
        values.put("tail", shown.cut(plan.piece().habits().tail().mm()));
        Row first = work.rows().get(0);
        first.meets(work.setting().ends())
                .ifPresent(passing -> values.put("shed", new ShedWords(phrases, words).meets(passing, first.from())));
        first.lean().ifPresent(lean -> values.put("lean", phrases.say("lean." + lean)));
        values.putAll(work.block().counts());
    }

    private void hem(Optional<Hem> hem, Map<String, Object> values) {
        values.put("depth", shown.height(hem.filter(Hem::folds).map(Hem::depth).orElse(0.0)));
        values.put("layers", hem.map(Hem::layers).orElse(1));
    }

    /** Of several finishes in one end only the first is planned; the others say what they are, but what they'd take. */
    private Finish finish(EndPlan end, EdgeFinish block) {
        return end.finish()
                .filter(finish -> finish.block().equals(block))
                .orElseGet(() -> new Finish(
                        block,
                        block.groups(plan.piece().warp().ends()),
                        block.freeWarp(plan.piece().setting(plan.piece().warpYarn())),
                        end.free(),
                        Optional.empty()));
    }

    private void finish(Finish finish, EndPlan end, Map<String, Object> values) {
        values.putAll(new FinishWords(shown, phrases, words).values(finish));
        values.put("height", shown.height(0));
        values.put("group", finish.block().endsPerGroup());
        values.put("free", values.get("needed"));
        if (finish.block() instanceof KnotRows knots) {
            values.put(
                    "apart",
                    shown.height(knots.step(plan.piece().setting(plan.piece().warpYarn()))));
        }
        if (finish.block() instanceof WrappedTassels tassels) {
            values.put("yarn", plan.piece().yarnOf(tassels, end.place()).name());
            values.put("turns", tassels.turns());
            values.put("pieces", finish.groups().size());
            values.put(
                    "wrapped",
                    shown.height(finish.wrapping().map(Wrapping::height).orElse(0.0)));
            values.put(
                    "cut",
                    shown.cut(
                            finish.wrapping().map(each -> each.each().length()).orElse(0.0)));
        }
    }

    /** Each place that a block knows, with what stands in it now; in the order in which to offer them. */
    public Map<String, String> offered(Place place, String blockId) {
        Map<String, String> offered = new LinkedHashMap<>();
        EndPlan end = plan.end(place);
        end.block(blockId).ifPresent(block -> {
            Map<String, Object> values = values(end, block);
            OwnWords.places(block.block()).forEach(each -> offered.put(each, String.valueOf(values.get(each))));
        });
        return offered;
    }

    /** For a block of an end as it is planned, if it is there. */
    public List<String> preview(Place place, String blockId, String wording) {
        EndPlan end = plan.end(place);
        return end.block(blockId).map(block -> fill(wording, end, block)).orElse(List.of());
    }
}
