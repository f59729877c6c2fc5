package thrumwright.plan.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.PlainBand;
import thrumwright.block.Soumak;
import thrumwright.block.Turning;
import thrumwright.block.Twining;
import thrumwright.block.WarpLoops;
import thrumwright.block.WrappedTassels;
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

    /**
     * @param locale the language wanted; where there is no text in it, English
     * @param shown the units to show
     */
    public ComparisonWords(Locale locale, Shown shown) {
        this.phrases = Phrases.of("thrumwright.plan.comparison", locale);
        this.words = new Words(locale);
        this.shown = shown;
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
        String bare = fringe(finish.block());
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

    private String fringe(EdgeFinish finish) {
        String key = "fringe." + Words.key(finish);
        return phrases.say(
                phrases.has(key) ? key : "fringe.other",
                Map.of(
                        "name", decapitalised(words.kind(finish)),
                        "length",
                                finish.length()
                                        .map(length -> shown.height(length.mm()))
                                        .orElse(""),
                        "rows", finish instanceof KnotRows knots ? knots.rows() : 1,
                        "turns", finish instanceof WrappedTassels tassels ? tassels.turns() : 1,
                        "ends", finish.endsPerGroup()));
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
                        "way", way(band.block()).orElse("")));
    }

    /** What such a band is called in a sentence. */
    private String name(FrontBand band) {
        String key = "band." + (band.pattern() instanceof PlainBand ? "plain" : Words.key(band.pattern()));
        return phrases.has(key) ? phrases.say(key) : decapitalised(words.kind(band.block()));
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
                        "start", lean(start.leans().get(0)),
                        "wanted", lean(wanted.get(0)),
                        "top", lean(there.get(0))));
    }

    private static List<Lean> turnedOver(List<Lean> leans) {
        return leans.stream().map(Lean::other).toList();
    }

    private static String strokes(List<Lean> leans) {
        return leans.stream().map(lean -> lean == Lean.S ? "\\" : "/").collect(Collectors.joining(" "));
    }

    private String lean(Lean lean) {
        return phrases.say("lean." + lean.name().toLowerCase(Locale.ROOT));
    }

    /** How the weaving of a pair differs on the loom, one sentence for each aspect. */
    public List<String> of(BlockPair pair) {
        List<String> sentences = new ArrayList<>();
        for (Aspect aspect : pair.differences()) {
            sentences.add(of(pair, aspect));
        }
        return sentences;
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
                way(start.block())
                        .flatMap(one -> way(top.block()).map(other -> both("pair.working", one, other)))
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
                        lean(BlockPair.firstLean(start).orElseThrow()),
                        lean(BlockPair.firstLean(top).orElseThrow()));
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

    /** How a block is worked, where that can be put in a few words. */
    private Optional<String> way(Block block) {
        if (block instanceof Twining twining) {
            return Optional.of(group(twining.endsPerGroup()));
        } else if (block instanceof HalfHitch hitch) {
            return Optional.of(group(hitch.endsPerGroup()));
        } else if (block instanceof Soumak soumak) {
            return Optional.of(phrases.say("way.soumak", Map.of("over", soumak.over(), "under", soumak.under())));
        } else if (block instanceof WarpLoops loops) {
            return Optional.of(phrases.say("way.loops", Map.of("held", words.held(loops, shown))));
        } else if (block instanceof EdgeFinish finish) {
            return Optional.of(fringe(finish));
        } else if (block instanceof HemFold fold) {
            return Optional.of(fold(fold));
        }
        return Optional.empty();
    }

    private String group(int ends) {
        return phrases.say("way.group", Map.of("ends", ends));
    }

    private String fold(HemFold fold) {
        String way = turning(fold.turning());
        return fold.support()
                .map(support ->
                        phrases.say("way.fold-for", Map.of("way", way, "support", words.support(support, shown))))
                .orElse(way);
    }

    private String turning(Turning turning) {
        if (turning instanceof Turning.Twice twice) {
            return phrases.say(
                    "way.fold-twice", Map.of("turn", shown.height(twice.first().mm())));
        } else if (turning instanceof Turning.Faced band) {
            return phrases.say(
                    "way.fold-faced", Map.of("width", shown.height(band.width().mm())));
        }
        return phrases.say(turning instanceof Turning.Mitred ? "way.fold-mitred" : "way.fold");
    }

    private static String decapitalised(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
