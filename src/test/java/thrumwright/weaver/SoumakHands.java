package thrumwright.weaver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.block.Side;

/** A yarn that goes forward in front and back behind. */
final class SoumakHands extends Hands {

    private int wrapped;
    private int over;
    private int counted;
    private int under;
    private boolean forwardInFront;
    private ClothRow.ComesUp comesUp = ClothRow.ComesUp.BELOW;
    private Optional<ClothRow.ComesUp> next = Optional.empty();

    SoumakHands(int ends) {
        super(ends);
        lets("The row list says (?:for every row )?where the yarn comes up\\.");
        lets("Draw each one snug, not tight\\.");
        when("Wrap the yarn once round " + OUTERMOST + "(?:: .*)?\\.", this::wrap);
        when(
                "Go forward in (front|back) over (\\d+) ends(?:, counting the (?:end|(\\d+) ends) just wrapped)?,"
                        + " then back (behind|in front of) (?:(\\d+) ends?|the last(?: (\\d+))? of them),"
                        + " and come to the front (below|above) your own float\\.",
                this::stitch);
        when("Go on so to the other side; wrap the last (?:end|\\d+ ends) too\\.", said -> {});
        when(
                "Go on so to the other side, where the last float goes over as many ends as are left and the outermost (end|\\d+ ends)"
                        + " (?:is|are) wrapped like the others\\.",
                said -> {
                    if (count(said.group(1)) != wrapped) {
                        throw new Unclear("At one side " + wrapped + " ends are wrapped: “" + said.group() + "”");
                    }
                });
        when("The floats lean up to the (left|right), like the stroke in ([SZ]) \\( [/\\\\] \\)\\.", said -> {
            agreeLean(begins(), comesUp, said.group(1));
            agreeLean(begins(), comesUp, said.group(2));
        });
        when(
                "In the next row, going back, (?:let )?the floats lean the (?:other|same) way.*\\.",
                said -> rowCount("2"));
        when(
                "In the next row, going back, begin with a wrap round " + OUTERMOST
                        + " and come to the front (below|above) your own float, so that the floats lean (\\S+)(?: again)?: (\\d+) rows in all\\.",
                said -> {
                    if (outermost(said, 1, begins().other()) != wrapped) {
                        throw new Unclear("The row before began with " + wrapped + " ends: “" + said.group() + "”");
                    }
                    next = Optional.of(comesUp(said.group(5)));
                    agreeLean(begins().other(), next.get(), said.group(6));
                    rowCount(said.group(7));
                });
    }

    private static final Pattern ROUND = Pattern.compile(
            ".*: in (front|back) over (?:it|them), back (behind|over) (?:it|them), and to the (front|back) again (below|above) your own yarn\\.");

    private void wrap(Matcher said) {
        wrapped = outermost(said, 1, begins());
        Matcher round = ROUND.matcher(said.group());
        if (round.matches()
                && !(round.group(1).equals("front")
                        && round.group(2).equals("behind")
                        && round.group(3).equals("front"))) {
            throw new Unclear("That is no wrap: “" + said.group() + "”");
        }
    }

    private void stitch(Matcher said) {
        forwardInFront = said.group(1).equals("front");
        over = Integer.parseInt(said.group(2));
        if (said.group(6) != null || said.group(5) == null) {
            counted = said.group(3) == null ? 1 : Integer.parseInt(said.group(3));
        }
        if (counted != wrapped && counted != 0) {
            throw new Unclear("“" + said.group() + "”, but " + wrapped + " were wrapped");
        }
        String back = said.group(5) == null ? said.group(6) : said.group(5);
        under = back == null ? 1 : Integer.parseInt(back);
        if (said.group(4).equals("in front of")) {
            throw new Unclear("Then nothing would hold: “" + said.group() + "”");
        }
        comesUp = comesUp(said.group(7));
    }

    @Override
    ClothRow row(int number, Side from, Optional<String> told) {
        ClothRow.ComesUp up = number % 2 == 1 ? comesUp : next.orElse(comesUp);
        told.ifPresent(line -> agree(from, up, line));
        Passes passes = new Passes();
        List<ClothRow.ComesUp> emerges = new ArrayList<>();
        int foot = 0;
        int head = wrapped - 1;
        while (true) {
            passes.past(end(from, foot), end(from, head), forwardInFront);
            foot = Math.max(0, head - under + 1);
            passes.past(end(from, head), end(from, foot), !forwardInFront);
            passes.past(end(from, foot), true);
            emerges.add(up);
            if (head == ends() - 1) {
                return new ClothRow(from, List.of(passes.fromSideToSide(from, ends())), emerges);
            }
            int ahead = counted == 0 ? head + over : head - counted + over;
            head = Math.min(ahead, ends() - 1);
        }
    }
}
