package thrumwright.weaver;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import thrumwright.block.Side;

/** Hands that finish the warp ends at an edge, as a step's sentences tell them. */
final class EdgeHands {
    private static final String RUN = "\\d+ of \\d+ ends?";
    private static final List<String> NOT_OF_THE_ENDS = List.of(
            "Take out: .*\\.",
            "Take the waste out only as far as you are working, so that the edge can't slip\\.",
            "! .*",
            "Slide it close against the edge before you draw it tight\\.",
            "When the hem is folded, turn knots and ends in under it, towards the fold\\.",
            "(?:Comb the .* straight and trim|Trim) .*\\.",
            "A strip of card as high as that keeps the row straight\\.",
            "The outer halves hang free\\.",
            "Tie an overhand knot at the end of each (?:cord|plait), so that it hangs .*\\.",
            "Gather a group close to the edge\\.",
            "Lay its yarn along it as a loop, .* the bend pointing away from the cloth, and let the short tail hang out"
                    + " beside the cloth\\.",
            "Put the end through the loop’s bend\\.",
            "Pull the short tail until the loop has pulled it half way under the wrapping, and cut both tails off"
                    + " close\\.",
            "When the hem is folded, turn knots and ends in under it, towards the fold\\.",
            "Draw it snug against the edge\\.",
            "All ends hang at the back now\\.",
            "All ends hang side by side from the edge now\\.",
            "Darn each of them .* back along its neighbour, on the wrong side, and trim what is left\\.",
            "Draw the (?:rod|cord) out sideways.*\\.",
            "Draw the linked warp out of the loops, thread by thread\\.",
            "The cord stays in the loops\\.",
            "Cut it a hand longer than the edge at both sides and darn its ends back along the selvedges\\.",
            "Lift the loops off the nails with a blunt needle, .*\\.",
            "See that every loop lies flat along the edge\\.",
            "The loops stand out by .*\\.",
            "Ease the last picks outwards with the needle until they lie in the loops, evenly all along\\.");

    private final Map<Pattern, Consumer<Matcher>> readings = new LinkedHashMap<>();
    private final int ends;
    private final List<EdgeWork.Bunch> groups = new ArrayList<>();
    private boolean knotted;
    private boolean halves;
    private boolean leftMore;
    private boolean byTurns;
    private int rows = 1;
    private int parts = 1;
    private int turns;
    private int pieces;
    private Side from = Side.LEFT;
    private int over;
    private int through;
    private boolean inTurn;
    private boolean fewer;
    private boolean bothWays;
    private boolean atBack;
    private int tails;

    EdgeHands(int ends) {
        this.ends = ends;
        NOT_OF_THE_ENDS.forEach(known -> when(known, said -> {}));
        when("Part the ends into (\\d+) groups?: (\\d+) ends? each\\.", said -> alike(said, 1, 2));
        when("Take all (\\d+) ends together as one group\\.", said -> group(Integer.parseInt(said.group(1))));
        when("Part the ends into (\\d+) groups, from the left: (" + RUN + "(?:, then " + RUN + ")*)\\.", this::inOrder);
        fringes();
        knots();
        tassels();
        turnedEnds();
        wovenEdge();
        when(
                "Thread each warp end on a blunt needle and darn it back .* along its neighbour, on the wrong side\\.",
                said -> {});
        when("The warp yarn’s tail is here: darn it back along its neighbour, on the wrong side\\.", said -> tails = 1);
        when(
                "Both tails of the warp yarn are here: darn each back along its neighbour, on the wrong side\\.",
                said -> tails = 2);
    }

    private void fringes() {
        when("Tie each group in one overhand knot\\.", said -> knotted = true);
        when("Divide each group in two, as evenly as it goes\\.", said -> parts = 2);
        when(
                "Twist both halves the (same) way until they kink, lay them together and let them ply back the (other) way\\.",
                said -> {
                    if (parts != 2) {
                        throw new Unclear("Both halves of what? “" + said.group() + "”");
                    }
                });
        when("Divide each group in three, as evenly as it goes, and plait it firmly\\.", said -> parts = 3);
    }

    private void knots() {
        when("In the next row, part every group in half and tie each half to its neighbour's, .*\\.", said -> {
            halves = true;
            rows = 2;
        });
        when("Where a group has an odd number of ends, its left half has one more\\.", said -> leftMore = true);
        when("Go on by turns: the whole groups, then the halves, (\\d+) rows in all\\.", said -> {
            byTurns = true;
            rows = Integer.parseInt(said.group(1));
        });
        when("Tie the same groups again, .* (\\d+) rows? in all\\.", said -> rows = Integer.parseInt(said.group(1)));
    }

    private void tassels() {
        when("(\\d+) pieces? of .*, .* each, one for a tassel\\.", said -> pieces = Integer.parseInt(said.group(1)));
        when(
                "Wrap the long end round loop and tassel, from the cloth outwards, (\\d+) turns? side by side and firm\\.",
                said -> turns = Integer.parseInt(said.group(1)));
    }

    private void turnedEnds() {
        when(
                "Lay the piece face up, the top away from you, and begin at the (left|right)\\.",
                said -> from = side(said, 1));
        when(
                "Take the (left|right) edge end behind its (?:neighbour|next (\\d+) neighbours), round (?:it|the last of them) to the front,"
                        + "(?: back over them all,)? and to the back again (?:between the two|next to its own place), farther from"
                        + " the cloth than where it set out\\.",
                said -> {
                    if (side(said, 1) != from) {
                        throw new Unclear("The work begins at the " + from + ": “" + said.group() + "”");
                    }
                    over = said.group(2) == null ? 1 : Integer.parseInt(said.group(2));
                });
        when("Do so with every end in turn\\.", said -> inTurn = true);
        when(
                "Towards the other side go round as many neighbours as are left; draw the very last end back under the wraps with a needle\\.",
                said -> fewer = true);
        when(
                "Then work a second row from the (left|right), outside the first: the same with every end, the other way\\.",
                said -> {
                    if (side(said, 1) == from) {
                        throw new Unclear("The other way begins at the other side: “" + said.group() + "”");
                    }
                    bothWays = true;
                });
    }

    private void wovenEdge() {
        when(
                "Weave the (left|right) edge end as a pick across its next (\\d+) neighbours: over the first, under the second, and so on"
                        + " by turns\\.",
                said -> {
                    if (side(said, 1) != from) {
                        throw new Unclear("The work begins at the " + from + ": “" + said.group() + "”");
                    }
                    through = Integer.parseInt(said.group(2));
                });
        when("Beyond the last of them take it to the back\\.", said -> atBack = true);
        when(
                "Do so with every end in turn, each farther from the cloth than those that were woven before it\\.",
                said -> inTurn = true);
        when(
                "Towards the other side go through as many neighbours as are left; draw the very last end back under the others with a"
                        + " needle\\.",
                said -> fewer = true);
    }

    private static Side side(Matcher said, int at) {
        return Hands.side(said.group(at));
    }

    private void when(String regex, Consumer<Matcher> does) {
        readings.put(Pattern.compile(regex), does);
    }

    void hear(String sentence) {
        Matcher said = readings.keySet().stream()
                .map(pattern -> pattern.matcher(sentence))
                .filter(Matcher::matches)
                .findFirst()
                .orElseThrow(() -> new Unclear("What does this mean? “" + sentence + "”"));
        readings.get(said.pattern()).accept(said);
    }

    /** Tails of the warp yarn that are darned in here. */
    int tails() {
        return tails;
    }

    private void alike(Matcher said, int count, int each) {
        for (int i = 0; i < Integer.parseInt(said.group(count)); i++) {
            group(Integer.parseInt(said.group(each)));
        }
    }

    private void inOrder(Matcher said) {
        Matcher run = Pattern.compile("(\\d+) of (\\d+) ends?").matcher(said.group(2));
        while (run.find()) {
            alike(run, 1, 2);
        }
        if (groups.size() != Integer.parseInt(said.group(1))) {
            throw new Unclear("That makes " + groups.size() + " groups: “" + said.group() + "”");
        }
    }

    private void group(int size) {
        int first = groups.isEmpty() ? 0 : last().first() + last().count();
        groups.add(new EdgeWork.Bunch(first, size));
    }

    private EdgeWork.Bunch last() {
        return groups.get(groups.size() - 1);
    }

    EdgeWork work() {
        if (!groups.isEmpty() && last().first() + last().count() != ends) {
            throw new Unclear("The groups take " + (last().first() + last().count()) + " of " + ends + " ends");
        }
        if (turns > 0 && pieces != groups.size()) {
            throw new Unclear(pieces + " pieces of yarn for " + groups.size() + " tassels");
        }
        if (!groups.isEmpty() && !knotted && parts == 1 && turns == 0) {
            throw new Unclear("What becomes of the groups?");
        }
        List<List<EdgeWork.Bunch>> bunches = groups.isEmpty()
                ? List.of()
                : IntStream.range(0, rows).mapToObj(this::row).toList();
        return new EdgeWork(bunches, parts, turns, turned());
    }

    private List<EdgeWork.Bunch> row(int row) {
        if (!halves || row % 2 == 0) {
            return groups;
        }
        if (rows > 2 && !byTurns) {
            throw new Unclear("How do the rows go on?");
        }
        List<EdgeWork.Bunch> joined = new ArrayList<>();
        for (int i = 1; i < groups.size(); i++) {
            int first = half(groups.get(i - 1));
            joined.add(new EdgeWork.Bunch(first, half(groups.get(i)) - first));
        }
        return joined;
    }

    private int half(EdgeWork.Bunch group) {
        if (group.count() % 2 == 1 && !leftMore) {
            throw new Unclear("How are " + group.count() + " ends parted in half?");
        }
        return group.first() + (group.count() + 1) / 2;
    }

    private List<List<Passes>> turned() {
        if (over == 0 && through == 0) {
            return List.of();
        }
        if (!inTurn || !fewer) {
            throw new Unclear("How does it go on after the first end?");
        }
        if (through > 0) {
            return List.of(IntStream.range(0, ends - 1).mapToObj(this::across).toList());
        }
        List<Side> sides = bothWays ? List.of(from, from.other()) : List.of(from);
        return sides.stream()
                .map(side -> IntStream.range(0, ends - 1)
                        .mapToObj(own -> round(side, own))
                        .collect(Collectors.toList()))
                .collect(Collectors.toList());
    }

    private Passes across(int own) {
        if (!atBack) {
            throw new Unclear("Where do ends go that are woven through?");
        }
        Passes passes = new Passes();
        int last = Math.min(through, ends - 1 - own);
        for (int i = 1; i <= last; i++) {
            passes.past(end(from, own + i), i % 2 != 0);
        }
        return passes.past(end(from, own + last), false);
    }

    private Passes round(Side side, int own) {
        int first = end(side, own + 1);
        int last = end(side, Math.min(own + over, ends - 1));
        return new Passes().past(first, last, false).past(last, first, true).past(first, false);
    }

    private int end(Side side, int index) {
        return side == Side.LEFT ? index : ends - 1 - index;
    }
}
