package thrumwright.weaver;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.block.Side;

/** Plain picks: bands, headers and the cord that orders the warp. */
class PickHands extends Hands {
    private static final String SAYS_NOTHING_OF_THE_WAY =
            "(?:Lay (?:each|it) in|Beat|It holds the edge|It will lie behind|Pull it|"
                    + "All that follows|Don’t beat|After each pick|Ends that stood|Strips of card|"
                    + "If the side of the loom|Then push it).*";
    private static final Pattern ROW = Pattern.compile("(over|under) " + OUTERMOST + "(?:, (open|pulled) shed)?");

    private boolean firstOver;
    private boolean secondOver;
    private boolean thirdOver;
    private boolean otherShed = true;
    private boolean[] before = {};
    private boolean[] now = {};

    PickHands(int ends) {
        super(ends);
        lets(SAYS_NOTHING_OF_THE_WAY);
        lets("Lay \\d+ strands of it together, and weave with them as with one yarn\\.");
        when("Tie the cord to the (left|right) post, .*\\.", said -> {
            begin(side(said.group(1)));
            tail(begins(), Cloth.Kept.TIED_TO_A_POST);
        });
        when("Tie it to the (left|right) post\\.", said -> {
            finish(side(said.group(1)));
            tail(finishes(), Cloth.Kept.TIED_TO_A_POST);
        });
        when("Tie the cord round " + edge() + ", .* from its end: once round, and a knot\\.", said -> {
            begin(side(said.group(1)));
            tail(begins(), Cloth.Kept.TIED_ROUND_THE_EDGE_END);
        });
        when("Tie it round " + edge() + "\\.", said -> {
            finish(side(said.group(1)));
            tail(finishes(), Cloth.Kept.TIED_ROUND_THE_EDGE_END);
        });
        when("Weave it through the bare warp, over one end and under the next\\.", said -> {});
        when(
                "(?:The first|The only) pick goes (over|under) " + OUTERMOST
                        + "(?:, then (over|under) and (over|under) by turns.*)?\\.",
                this::first);
        when("(?:Every|each) pick goes the (other|same) way from the one before: (\\d+) picks? in all\\.", said -> {
            otherShed = said.group(1).equals("other");
            rowCount(said.group(2));
        });
        when(
                "The first pick goes (over|under) " + OUTERMOST
                        + "(?:, then (over|under) and (over|under) by turns)?; every pick goes the (other|same) way from the one before: (\\d+) picks? in all\\.",
                said -> {
                    first(said);
                    otherShed = said.group(8).equals("other");
                    rowCount(said.group(9));
                });
        when(
                "(?:Lead it round the (?:far|other) post, and come|Each pick after it comes) back (over|under) the ends that the one before went (over|under),"
                        + " and (over|under) those that it went (over|under): (\\d+) picks in all\\.",
                said -> {
                    otherShed = !said.group(1).equals(said.group(2));
                    if (otherShed == said.group(3).equals(said.group(4))
                            || said.group(1).equals(said.group(3))) {
                        throw new Unclear("That can't be woven: “" + said.group() + "”");
                    }
                    rowCount(said.group(5));
                });
        when("Lead it round the far post, come back in the (other|same) shed, and so on: (\\d+) picks?\\.", said -> {
            otherShed = said.group(1).equals("other");
            rowCount(said.group(2));
        });
    }

    private static String edge() {
        return "the (?:outermost end at the )?(left|right)(?: edge end)?";
    }

    private void first(Matcher said) {
        firstOver = said.group(1).equals("over");
        if (outermost(said, 2, begins()) != 1) {
            throw new Unclear("A pick meets one end after the other: “" + said.group() + "”");
        }
        secondOver = said.group(6) == null ? !firstOver : said.group(6).equals("over");
        thirdOver = said.group(7) == null ? firstOver : said.group(7).equals("over");
    }

    @Override
    ClothRow row(int number, Side from, Optional<String> told) {
        boolean[] front = new boolean[ends()];
        Passes passes = new Passes();
        for (int i = 0; i < ends(); i++) {
            int end = end(from, i);
            front[end] = before.length == 0 ? first(i) : before[end] != otherShed;
            passes.past(end, front[end]);
        }
        now = front;
        told.ifPresent(line -> compare(line, passes, from));
        before = front;
        return new ClothRow(from, List.of(passes), List.of());
    }

    /** In the open shed the left edge end lies behind the weft, in the pulled one in front of it. */
    private void shed(Matcher said, String line) {
        if (said.group(6) != null && said.group(6).equals("open") != now[0]) {
            throw new Unclear("In that shed the left edge end doesn't lie so: “" + line + "”");
        }
    }

    private boolean first(int index) {
        if (index == 0) {
            return firstOver;
        }
        return index % 2 == 1 ? secondOver : thirdOver;
    }

    private void compare(String line, Passes passes, Side from) {
        Matcher said = ROW.matcher(line);
        if (!said.matches()) {
            throw new Unclear("What does this mean? “" + line + "”");
        }
        outermost(said, 2, from);
        shed(said, line);
        if (passes.first().front() != said.group(1).equals("over")) {
            throw new Unclear("From the " + from + " the row list says “" + line
                    + "”: that is the shed of the pick before, and the sentences say the other");
        }
    }
}
