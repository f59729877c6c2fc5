package thrumwright.plan.words;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thrumwright.block.Lean;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Work;
import thrumwright.plan.comparison.BlockPair;
import thrumwright.plan.comparison.BlockPair.Aspect;
import thrumwright.plan.comparison.EndComparison;
import thrumwright.plan.comparison.FrontBand;
import thrumwright.plan.comparison.FrontDifference;
import thrumwright.yarn.Yarn;

/** Says in sentences what {@link EndComparison} found. */
public final class ComparisonWords {
    private final Phrases phrases;
    private final Words words;
    private final Shown shown;
    private final WayWords ways;

    /**
     * @param locale the language wanted; where there is no text in it, English
     * @param shown the units to show
     */
    public ComparisonWords(Locale locale, Shown shown) {
        this.phrases = Phrases.of("thrumwright.plan.comparison", locale);
        this.words = new Words(locale);
        this.shown = shown;
        this.ways = new WayWords(phrases, words, shown);
    }

    /** “Both ends look alike from the front.”, or one sentence for each difference. */
    public List<String> front(EndComparison comparison) {
        if (comparison.alike()) {
            return List.of(phrases.say("front.alike"));
        }
        return comparison.front().stream().map(this::front).toList();
    }

    /** One difference of the finished fronts. */
    public String front(FrontDifference difference) {
        if (difference instanceof FrontDifference.Bands bands) {
            return bands(bands);
        } else if (difference instanceof FrontDifference.Depths depths) {
            return either(
                    depths.start().map(shown::height),
                    depths.top().map(shown::height),
                    "depth",
                    List.of("front.hems", "front.hem-start-only", "front.hem-top-only"));
        }
        return fringes((FrontDifference.Fringes) difference);
    }

    private String fringes(FrontDifference.Fringes fringes) {
        Optional<String> start = fringes.start().map(finish -> fringe(finish, ""));
        Optional<String> top = fringes.top().map(finish -> fringe(finish, ""));
        if (start.equals(top)) {
            start = fringes.start().map(finish -> fringe(finish, ".colour"));
            top = fringes.top().map(finish -> fringe(finish, ".colour"));
        }
        return either(
                start, top, "fringe", List.of("front.fringes", "front.fringe-start-only", "front.fringe-top-only"));
    }

    /** @param more which words for the yarn that it is wrapped with, if it is */
    private String fringe(Finish finish, String more) {
        String bare = ways.fringe(finish.block());
        return finish.wrapping()
                .map(wrapping -> phrases.say(
                        "fringe.wrapped" + more,
                        Map.of(
                                "fringe", bare,
                                "height", shown.height(wrapping.height()),
                                "yarn", wrapping.yarn().name(),
                                "colour", wrapping.yarn().colour().text())))
                .orElse(bare);
    }

    /** @param keys for both, for the start's only, for the top's only */
    private String either(Optional<String> start, Optional<String> top, String one, List<String> keys) {
        if (start.isPresent() && top.isPresent()) {
            return phrases.say(keys.get(0), Map.of("start", start.get(), "top", top.get()));
        }
        return start.map(text -> phrases.say(keys.get(1), Map.of(one, text)))
                .orElseGet(() -> phrases.say(keys.get(2), Map.of(one, top.orElseThrow())));
    }

    private String bands(FrontDifference.Bands bands) {
        if (bands.start().isEmpty() || bands.top().isEmpty()) {
            String key = bands.top().isEmpty() ? "front.start-only" : "front.top-only";
            FrontBand band = bands.start().or(bands::top).orElseThrow();
            return phrases.say(key, Map.of("band", seen("seen", band)));
        }
        FrontBand start = bands.start().get();
        FrontBand top = bands.top().get();
        if (bands.only(FrontDifference.Aspect.LEAN)) {
            return lean(start, top);
        }
        for (String key : List.of("seen", "seen.rows", "seen.way")) {
            String one = seen(key, start);
            String other = seen(key, top);
            if (!one.equals(other)) {
                return phrases.say("front.bands", Map.of("start", one, "top", other));
            }
        }
        return phrases.say("front.bands", Map.of("start", seen("seen.colour", start), "top", seen("seen.colour", top)));
    }

    private String seen(String key, FrontBand band) {
        if (band.open()) {
            return phrases.say("seen.open", Map.of("height", shown.height(band.height())));
        }
        return phrases.say(
                key,
                Map.of(
                        "height", shown.height(band.height()),
                        "band", name(band),
                        "yarn", band.yarn().orElseThrow().name(),
                        "colour", band.yarn().orElseThrow().colour().text(),
                        "rows", shown.halves(band.rows()),
                        "way", band.block().of(ways).orElse("")));
    }

    /** What such a band is called in a sentence. */
    private String name(FrontBand band) {
        return phrases.say("band." + band.pattern().key());
    }

    /** Leans as they are seen: those of the top, which are kept turned over, turned back. */
    private String lean(FrontBand start, FrontBand top) {
        List<Lean> wanted = turnedOver(start.leans());
        List<Lean> there = turnedOver(top.leans());
        boolean oneWay = start.leans().stream().distinct().count() == 1
                && top.leans().stream().distinct().count() == 1;
        if (!oneWay) {
            return phrases.say(
                    "front.lean-rows", Map.of("band", name(start), "wanted", strokes(wanted), "top", strokes(there)));
        }
        return phrases.say(
                "front.lean",
                Map.of(
                        "band", name(start),
                        "start", ways.lean(start.leans().get(0)),
                        "wanted", ways.lean(wanted.get(0)),
                        "top", ways.lean(there.get(0))));
    }

    private static List<Lean> turnedOver(List<Lean> leans) {
        return leans.stream().map(Lean::other).toList();
    }

    private static String strokes(List<Lean> leans) {
        return leans.stream().map(lean -> lean == Lean.S ? "\\" : "/").collect(Collectors.joining(" "));
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
            case SHED -> both("pair.shed", meets(start), meets(top));
            case SIDE -> both("pair.side", words.side(start.begins()), words.side(top.begins()));
            default -> throw new IllegalArgumentException(aspect + " is said elsewhere");
        };
    }

    private String meets(Work work) {
        return words.meets(work.rows().get(0), work.setting().ends()).orElseThrow();
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
