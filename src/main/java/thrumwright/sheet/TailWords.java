package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.words.Words;

/** What becomes of the tails that hang at the edges when the piece is off the loom. */
final class TailWords {
    /** How far a tail is run in, mm (common practice, no source). */
    private static final double RUN_IN = 25;

    private final List<Work> staying;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;

    TailWords(Plan plan, Phrases phrases, Words words) {
        this.staying = Stream.of(plan.start(), plan.top())
                .flatMap(end -> end.blocks().stream())
                .filter(BlockPlan::stays)
                .flatMap(block -> block.work().stream())
                .toList();
        this.shown = plan.piece().shown();
        this.phrases = phrases;
        this.words = words;
    }

    private int tails(boolean holding) {
        return staying.stream()
                .filter(work -> work.block().holds() == holding)
                .mapToInt(work -> work.tails().size())
                .sum();
    }

    /** “twining and half hitches”. */
    private String held() {
        return staying.stream()
                .map(Work::block)
                .filter(YarnBlock::holds)
                .map(block -> words.kind(block).toLowerCase(Locale.ROOT))
                .distinct()
                .collect(Collectors.joining(phrases.say("list.and")));
    }

    /** None where no tail stays. */
    List<Sentence> sentences() {
        List<Sentence> sentences = new ArrayList<>();
        int holding = tails(true);
        int weft = tails(false);
        String run = shown.height(RUN_IN);
        if (holding > 0) {
            sentences.add(
                    Sentence.of(phrases, "off.tails.holding", Map.of("blocks", held(), "count", holding, "run", run)));
        }
        if (weft > 0) {
            sentences.add(Sentence.of(phrases, "off.tails.weft", Map.of("count", weft, "run", run)));
        }
        if (!sentences.isEmpty()) {
            sentences.add(Sentence.of(phrases, "off.tails.design", Map.of()));
        }
        return sentences;
    }
}
