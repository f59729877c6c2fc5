package thrumwright.plan.words;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Work;
import thrumwright.plan.comparison.BlockPair;
import thrumwright.plan.comparison.BlockPair.Aspect;
import thrumwright.plan.comparison.EndComparison;
import thrumwright.plan.comparison.FrontDifference;
import thrumwright.yarn.Yarn;

/** Says in sentences what {@link EndComparison} found. */
public final class ComparisonWords {
    private final Phrases phrases;
    private final Words words;
    private final Shown shown;
    private final WayWords ways;
    private final FrontWords fronts;

    /**
     * @param locale the language wanted; where there is no text in it, English
     * @param shown the units to show
     */
    public ComparisonWords(Locale locale, Shown shown) {
        this.phrases = Phrases.of("thrumwright.plan.comparison", locale);
        this.words = new Words(locale);
        this.shown = shown;
        this.ways = new WayWords(phrases, words, shown);
        this.fronts = new FrontWords(phrases, ways, shown);
    }

    /** “Both ends look alike from the front.”, or one sentence for each difference. */
    public List<String> front(EndComparison comparison) {
        if (comparison.alike()) {
            return List.of(phrases.say("front.alike"));
        }
        return comparison.front().stream().map(fronts::front).toList();
    }

    /** One difference of the finished fronts. */
    public String front(FrontDifference difference) {
        return fronts.front(difference);
    }

    /** How the weaving of a pair differs on the loom, one sentence for each aspect. */
    public List<String> of(BlockPair pair) {
        return pair.differences().stream().map(aspect -> of(pair, aspect)).toList();
    }

    /** @param aspect in which the pair differs */
    public String of(BlockPair pair, Aspect aspect) {
        if (aspect == Aspect.LEFT_OUT || aspect == Aspect.ADDED) {
            String key = aspect == Aspect.ADDED ? "pair.added" : "pair.left-out";
            return phrases.say(key, Map.of("block", words.name(pair.block())));
        }
        BlockPlan start = pair.start().orElseThrow();
        BlockPlan top = pair.top().orElseThrow();
        return switch (aspect) {
            case KIND -> both("pair.kind", words.kind(start.block()), words.kind(top.block()));
            case WORKING ->
                start.block()
                        .of(ways)
                        .flatMap(one -> top.block().of(ways).map(other -> both("pair.working", one, other)))
                        .orElseGet(() -> phrases.say("pair.working-otherwise"));
            case HEIGHT -> height(start, top);
            case YARN -> yarn(start.yarn().orElseThrow(), top.yarn().orElseThrow());
            case COMES_OUT -> phrases.say(start.comesOut() ? "pair.comes-out" : "pair.stays");
            default -> work(start.work().orElseThrow(), top.work().orElseThrow(), aspect);
        };
    }

    private String height(BlockPlan start, BlockPlan top) {
        String one = shown.height(start.height());
        String other = shown.height(top.height());
        return one.equals(other)
                ? both("pair.height", shown.fine(start.height()), shown.fine(top.height()))
                : both("pair.height", one, other);
    }

    private String work(Work start, Work top, Aspect aspect) {
        return switch (aspect) {
            case ROWS -> both("pair.rows", start.rows().size(), top.rows().size());
            case LEAN ->
                both(
                        "pair.lean",
                        ways.lean(BlockPair.firstLean(start).orElseThrow()),
                        ways.lean(BlockPair.firstLean(top).orElseThrow()));
            case SHED ->
                both(
                        "pair.shed",
                        words.shed(BlockPair.firstShed(start).orElseThrow()),
                        words.shed(BlockPair.firstShed(top).orElseThrow()));
            case SIDE -> both("pair.side", words.side(start.begins()), words.side(top.begins()));
            default -> throw new IllegalArgumentException(aspect + " is said elsewhere");
        };
    }

    private String yarn(Yarn start, Yarn top) {
        if (!start.name().equals(top.name())) {
            return both("pair.yarn", start.name(), top.name());
        }
        return phrases.say(
                "pair.yarn-of-one-name",
                Map.of(
                        "start", start.name(),
                        "startColour", start.colour().text(),
                        "topColour", top.colour().text()));
    }

    private String both(String key, Object start, Object top) {
        return phrases.say(key, Map.of("start", start, "top", top));
    }
}
