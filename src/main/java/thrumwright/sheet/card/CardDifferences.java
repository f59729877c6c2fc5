package thrumwright.sheet.card;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.comparison.BlockPair;
import thrumwright.plan.comparison.BlockPair.Aspect;
import thrumwright.plan.comparison.EndComparison;
import thrumwright.plan.words.ComparisonWords;
import thrumwright.sheet.Step;
import thrumwright.yarn.Yarn;

/** How the start had it where the top differs, in a few words beside the block that differs. */
final class CardDifferences {
    /** What is told together: by the signs of the start's first row. */
    private static final Set<Aspect> WAY = EnumSet.of(Aspect.LEAN, Aspect.SHED, Aspect.SIDE);

    /** What takes a whole sentence. */
    private static final Set<Aspect> SENTENCES = EnumSet.of(Aspect.WORKING, Aspect.COMES_OUT);

    private final CardVoice voice;
    private final List<Step> start;
    private final ComparisonWords comparison;
    private final List<BlockPair> pairs;

    /** @param start the start's steps */
    CardDifferences(CardVoice voice, List<Step> start) {
        Plan plan = voice.plan();
        this.voice = voice;
        this.start = start;
        this.comparison = new ComparisonWords(voice.locale(), voice.shown());
        this.pairs = plan.start().blocks().isEmpty()
                ? List.of()
                : EndComparison.of(plan).pairs();
    }

    /** What is not repeated, or that nothing differs. */
    List<String> ofAll() {
        String leftOut = pairs.stream()
                .filter(pair -> pair.has(Aspect.LEFT_OUT))
                .map(pair -> voice.words().name(pair.block()))
                .collect(Collectors.joining(", "));
        if (!leftOut.isEmpty()) {
            return List.of(voice.phrases().say("left-out", Map.of("blocks", leftOut)));
        }
        boolean alike = pairs.stream().allMatch(pair -> pair.differences().isEmpty());
        return alike && !pairs.isEmpty() ? List.of(voice.phrases().say("as-the-start")) : List.of();
    }

    /** In what a block of the top differs from the one that answers it. */
    List<String> of(BlockPlan block) {
        return pairs.stream()
                .filter(pair -> pair.top()
                        .filter(top -> top.block().id().equals(block.block().id()))
                        .isPresent())
                .flatMap(pair -> of(pair).stream())
                .toList();
    }

    private List<String> of(BlockPair pair) {
        if (pair.has(Aspect.ADDED)) {
            return List.of(voice.phrases().say("was.added"));
        }
        List<String> sentences = new ArrayList<>();
        List<String> had = had(pair);
        if (!had.isEmpty()) {
            sentences.add(voice.phrases().say("was", Map.of("what", String.join(", ", had))));
        }
        SENTENCES.stream().filter(pair::has).forEach(aspect -> sentences.add(comparison.of(pair, aspect)));
        return sentences;
    }

    private List<String> had(BlockPair pair) {
        List<String> had = new ArrayList<>();
        if (WAY.stream().anyMatch(pair::has)) {
            way(pair.start().orElseThrow()).ifPresent(had::add);
        }
        pair.differences().stream()
                .filter(aspect -> !WAY.contains(aspect) && !SENTENCES.contains(aspect))
                .forEach(aspect -> had.add(had(pair, aspect)));
        return had;
    }

    private String had(BlockPair pair, Aspect aspect) {
        BlockPlan start = pair.start().orElseThrow();
        return switch (aspect) {
            case KIND -> say("kind", voice.words().kind(start.block()));
            case HEIGHT -> say("height", voice.shown().height(start.height()));
            case YARN ->
                yarn(start.yarn().orElseThrow(), pair.top().orElseThrow().yarn().orElseThrow());
            case ROWS -> say("rows", start.work().orElseThrow().rows().size());
            default -> throw new IllegalArgumentException(aspect + " is said elsewhere");
        };
    }

    /** The start's first row, as its own card has it. */
    private Optional<String> way(BlockPlan block) {
        return start.stream()
                .filter(step -> step.picture().isPresent())
                .filter(step ->
                        step.picture().get().blockId().equals(block.block().id()))
                .findFirst()
                .map(step -> CardWay.of(voice, block.work().orElseThrow(), step.rows())
                        .get(0))
                .map(this::sign);
    }

    private String sign(CardWay way) {
        String brief = way.brief().replace(' ', '\u00a0');
        return voice.phrases().say("was.way", Map.of("arrow", way.arrow(), "brief", brief));
    }

    private String yarn(Yarn start, Yarn top) {
        String key = start.name().equals(top.name()) ? "was.yarn-of-one-name" : "was.yarn";
        return voice.phrases()
                .say(key, Map.of("yarn", start.name(), "colour", start.colour().text()));
    }

    private String say(String what, Object value) {
        return voice.phrases().say("was." + what, Map.of(what, value));
    }
}
