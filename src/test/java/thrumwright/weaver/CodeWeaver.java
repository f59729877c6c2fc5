package thrumwright.weaver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thrumwright.block.Side;

/**
 * Weaves what a step sheet says and nothing else. It has the sheet's words alone: no piece, no plan, no strands. What it
 * can't understand it says.
 */
final class CodeWeaver {
    private static final Pattern ENDS = Pattern.compile("Warp: (\\d+) ends of ");
    private static final Pattern NEXT_PICK = Pattern.compile(
            "The first pick begins at the (left|right) and goes (over|under) " + Hands.OUTERMOST + "\\.");
    private static final Pattern LAST_PICK =
            Pattern.compile("Its last pick (?:begins at the (left|right), )?goes (over|under) " + Hands.OUTERMOST
                    + " and ends at the (left|right); .*\\.");
    private static final Pattern HOLDING = Pattern.compile("The edge is held by [a-z ]+: take the (\\d+)"
            + " tails? one by one on a needle, lead each into the weaving beside the outermost warp end, .*\\.");
    private static final Pattern WEFT = Pattern.compile("Run (\\d+) weft tails? in on the wrong side, .*\\.");
    private static final List<String> NOTHING_WOVEN = List.of(
            "Nothing to weave\\.",
            "The hem will fold along .*\\.",
            "Its corners are turned in before it is folded\\.",
            "A band .* wide will cover what is turned back\\.",
            "The finished hem will be .* deep\\.",
            "Leave .* of the warp open\\.",
            "A strip of card of that height, woven in and drawn out when all is woven, keeps it even\\.",
            "This block is .* high\\.",
            "Its upper edge now stands .*\\.");

    private final SheetText sheet;
    private final int ends;

    /** A pick at the edge of the design: the side where it begins, and whether it goes over the outermost end there. */
    record EdgePick(Side from, boolean over) {}

    CodeWeaver(String text) {
        this.sheet = SheetText.of(text);
        Matcher warp = ENDS.matcher(text);
        if (!warp.find()) {
            throw new Unclear("Nothing says how many warp ends there are");
        }
        this.ends = Integer.parseInt(warp.group(1));
    }

    List<Cloth> start() {
        return sheet.chapter("The start").map(SheetText.Chapter::steps).orElse(List.of()).stream()
                .map(this::step)
                .toList();
    }

    /** Without the look at the design's last pick. */
    List<Cloth> top() {
        return sheet.chapter("The top").map(SheetText.Chapter::steps).orElse(List.of()).stream()
                .skip(1)
                .map(this::step)
                .toList();
    }

    /** How the design's first pick is to go. */
    EdgePick designBegins() {
        List<String> sentences = new ArrayList<>();
        sheet.chapter("The design").orElseThrow().steps().forEach(step -> sentences.addAll(step.sentences()));
        Matcher said = found(NEXT_PICK, sentences).orElseThrow(() -> new Unclear("How does the design begin?"));
        return pick(side(said.group(1)), said, 2);
    }

    /** How the design's last pick is taken to have gone; empty without a top. */
    Optional<EdgePick> designEnds() {
        return sheet.chapter("The top").map(top -> {
            Matcher said = found(LAST_PICK, SheetText.sentences(top.opening().toString()))
                    .orElseThrow(() -> new Unclear("How does the design end?"));
            Side from = side(said.group(7)).other();
            if (said.group(1) != null && side(said.group(1)) != from) {
                throw new Unclear("A pick ends at the side across from where it begins: “" + said.group() + "”");
            }
            return pick(from, said, 2);
        });
    }

    /** What becomes of the warp ends at an edge, where a step tells it; empty where they only are secured. */
    Optional<EdgeWork> edge(String place) {
        return edgeHands(place).map(EdgeHands::work);
    }

    /** How many tails of the warp yarn are darned in at an edge. */
    int warpTails(String place) {
        return edgeHands(place).map(EdgeHands::tails).orElse(0);
    }

    private Optional<EdgeHands> edgeHands(String place) {
        return offTheLoom()
                .filter(step -> step.title().endsWith(" at " + place))
                .findFirst()
                .map(step -> {
                    EdgeHands hands = new EdgeHands(ends);
                    step.sentences().forEach(hands::hear);
                    return hands;
                });
    }

    private Stream<SheetText.Step> offTheLoom() {
        return sheet.chapter("Off the loom").stream().flatMap(chapter -> chapter.steps().stream());
    }

    /** Tails that are to be led along the edge end, and such as are run in like a weft's, as the sheet counts them. */
    List<Integer> tailsToFinish() {
        List<String> sentences =
                offTheLoom().flatMap(step -> step.sentences().stream()).toList();
        return Stream.of(HOLDING, WEFT)
                .map(told -> found(told, sentences)
                        .map(said -> Integer.parseInt(said.group(1)))
                        .orElse(0))
                .toList();
    }

    private EdgePick pick(Side from, Matcher said, int at) {
        new PickHands(ends).outermost(said, at + 1, from);
        return new EdgePick(from, said.group(at).equals("over"));
    }

    private static Side side(String word) {
        return Hands.side(word);
    }

    private static Optional<Matcher> found(Pattern pattern, List<String> sentences) {
        return sentences.stream().map(pattern::matcher).filter(Matcher::matches).findFirst();
    }

    private Cloth step(SheetText.Step step) {
        try {
            return woven(step);
        } catch (Unclear unclear) {
            throw new Unclear("Step " + step.number() + ", " + step.title() + ": " + unclear.getMessage());
        }
    }

    private Cloth woven(SheetText.Step step) {
        if (step.rows().isEmpty()) {
            nothingWoven(step);
            return new Cloth(List.of(), List.of());
        }
        Hands hands = hands(step.words().toString());
        step.sentences().forEach(hands::hear);
        return hands.weave(step.rows());
    }

    private Hands hands(String words) {
        if (words.contains("Fold the yarn in the middle")) {
            return new TwiningHands(ends);
        } else if (words.contains("Go forward in")) {
            return new SoumakHands(ends);
        } else if (words.contains("on a blunt needle")) {
            return new HemstitchHands(ends);
        } else if (words.contains("half hitches")) {
            return new HitchHands(ends);
        }
        return words.contains("Part the warp into") ? new SlitHands(ends) : new PickHands(ends);
    }

    private static void nothingWoven(SheetText.Step step) {
        boolean loops = step.words().toString().contains("loops");
        for (String sentence : step.sentences()) {
            if (!loops && NOTHING_WOVEN.stream().noneMatch(sentence::matches)) {
                throw new Unclear("What does this mean? “" + sentence + "”");
            }
        }
    }
}
