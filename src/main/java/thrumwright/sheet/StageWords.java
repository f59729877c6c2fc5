package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.measure.Phrases;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Words;

/** What the stages of a block's working show: short, to be seen, and whole, for those who hear it. */
public final class StageWords {
    private final Plan plan;
    private final Phrases phrases;
    private final Words words;

    public StageWords(Plan plan, Locale locale) {
        this.plan = plan;
        this.phrases = Phrases.of("thrumwright.sheet.steps", locale);
        this.words = new Words(locale);
    }

    /** A sentence for each stage of a block of that end, in their order, to stand below its picture. */
    public List<String> captions(EndPlan end, BlockPlan block) {
        Map<String, Object> values = values(end, block);
        return block.stages().stream().map(key -> phrases.say(key, values)).toList();
    }

    /** The same with the block, its place and the stage's number, for those who hear it. */
    public List<String> says(EndPlan end, BlockPlan block) {
        List<String> captions = captions(end, block);
        List<String> says = new ArrayList<>();
        for (int i = 0; i < captions.size(); i++) {
            says.add(phrases.say(
                    "picture.stage",
                    Map.of(
                            "block", words.name(block.block()),
                            "place", words.place(end.place()),
                            "number", i + 1,
                            "count", captions.size(),
                            "what", captions.get(i))));
        }
        return says;
    }

    private Map<String, Object> values(EndPlan end, BlockPlan block) {
        Map<String, Object> values = new HashMap<>();
        values.put("height", plan.piece().shown().height(block.height()));
        block.work().ifPresent(work -> values.putAll(new BlockWords(plan, phrases, words).values(work)));
        end.finish()
                .filter(finish -> block.block().finish().isPresent())
                .ifPresent(finish -> values.putAll(finish(finish)));
        return values;
    }

    private Map<String, Object> finish(Finish finish) {
        return new FinishWords(plan.piece().shown(), phrases, words).values(finish);
    }
}
