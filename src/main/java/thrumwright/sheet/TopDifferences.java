package thrumwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import thrumwright.measure.Phrases;
import thrumwright.plan.Plan;
import thrumwright.plan.comparison.BlockPair;
import thrumwright.plan.comparison.EndComparison;
import thrumwright.plan.words.ComparisonWords;
import thrumwright.plan.words.Words;

/**
 * In what the top differs from the start as both are woven: lean, sheds, sides, yarns, heights, and what is left out. Said
 * before its first step, for whoever has the start in their hands still.
 */
final class TopDifferences {
    private final Plan plan;
    private final Phrases phrases;
    private final Words words;
    private final ComparisonWords comparison;

    TopDifferences(Plan plan, Phrases phrases, Words words, Locale locale) {
        this.plan = plan;
        this.phrases = phrases;
        this.words = words;
        this.comparison = new ComparisonWords(locale, plan.piece().shown());
    }

    /** What is left out, then a sentence or more for each block, in the order in which the top is woven. */
    List<String> sentences() {
        if (plan.start().blocks().isEmpty()) {
            return List.of();
        }
        List<BlockPair> pairs = new ArrayList<>(EndComparison.of(plan).pairs());
        String leftOut = pairs.stream()
                .filter(pair -> pair.has(BlockPair.Aspect.LEFT_OUT))
                .map(pair -> words.name(pair.block()))
                .collect(Collectors.joining(", "));
        List<String> sentences = new ArrayList<>();
        if (!leftOut.isEmpty()) {
            sentences.add(phrases.say("top.left-out", Map.of("blocks", leftOut)));
        }
        Collections.reverse(pairs);
        List<String> differing = pairs.stream()
                .filter(pair -> !pair.differences().isEmpty() && !pair.has(BlockPair.Aspect.LEFT_OUT))
                .map(this::sentence)
                .toList();
        if (!differing.isEmpty()) {
            sentences.add(phrases.say("top.differs"));
            sentences.addAll(differing);
        } else if (leftOut.isEmpty()) {
            sentences.add(phrases.say("top.as-the-start"));
        }
        return sentences;
    }

    private String sentence(BlockPair pair) {
        String all = String.join(" ", comparison.of(pair));
        return pair.has(BlockPair.Aspect.ADDED)
                ? phrases.say("top.differs.added", Map.of("all", all))
                : phrases.say("top.differs.block", Map.of("block", words.name(pair.block()), "all", all));
    }
}
