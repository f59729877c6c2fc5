package thrumwright.weaver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import thrumwright.block.Side;

/** Both halves of a folded yarn, crossing in every gap. */
final class TwiningHands extends Hands {

    private int folded;
    private int group;
    private boolean backHalfComesToTheFront;
    private ClothRow.ComesUp comesUp = ClothRow.ComesUp.BELOW;
    private Optional<ClothRow.ComesUp> next = Optional.empty();
    private boolean changeFacesAtTheSide;
    private boolean turnSaid;
    private boolean firstHalfInFront = true;

    TwiningHands(int ends) {
        super(ends);
        lets("If one leans the other way, .*\\.");
        lets("The row list says (?:for every row )?where the yarn comes up\\.");
        lets("Together the rows look like a plait\\.");
        when("Fold the yarn in the middle and hang the fold round " + OUTERMOST + "\\.", said -> {
            String side = said.group(2) == null ? said.group(4) : said.group(2);
            begin(side(side));
            folded = outermost(said, 1, begins());
        });
        when("One half lies in front of (?:the warp|it|them), the other behind\\.", said -> {});
        when(
                "(?:Let|In the gap beside (?:it|them) let) the halves change places.*: bring the back half to the front (below|above) the other,"
                        + " and lead the front half behind the next (end|\\d+ ends)\\.",
                said -> {
                    comesUp = comesUp(said.group(1));
                    group = count(said.group(2));
                    backHalfComesToTheFront = true;
                });
        when(
                "In the gap beside (?:it|them) the halves change places: bring the (back|front) half to the (front|back),"
                        + " (below|above) the other, and on (over|under) the next (end|\\d+ ends), and lead the (back|front) half"
                        + " (behind|in front of) (?:it|them)\\.",
                this::cross);
        when(
                "So on from gap to gap, to the other side(?:, where (\\d+) (?:end is|ends are) left for the last group)?\\.",
                this::goOn);
        when(
                "Every stitch of the first row must lean up to the (left|right), like the stroke in ([SZ]) \\( [/\\\\] \\)\\.",
                said -> {
                    agreeLean(begins(), comesUp, said.group(1));
                    agreeLean(begins(), comesUp, said.group(2));
                });
        when(
                "In the next row, going back, (?:let )?the stitches lean the (?:other|same) way.*\\.",
                said -> rowCount("2"));
        when(
                "At the side lead the half in (front|back) round the outermost end to the (front|back), and the half at the (front|back) to the"
                        + " (front|back)\\.",
                said -> {
                    turnSaid = true;
                    changeFacesAtTheSide = !said.group(1).equals(said.group(2));
                });
        when(
                "In the next row, going back, the back half comes to the front (below|above) the other, so that the stitches lean"
                        + " (\\S+)(?: again)?: (\\d+) rows in all\\.",
                said -> {
                    next = Optional.of(comesUp(said.group(1)));
                    agreeLean(begins().other(), next.get(), said.group(2));
                    rowCount(said.group(3));
                });
        lets("Count the groups anew from the side where the row begins\\.");
        when("Both halves end at the (left|right)\\.", said -> finish(side(said.group(1))));
        when("Cross them once more (?:beyond the last end )?and leave both tails hanging there\\.", said -> {
            tail(finishes(), Cloth.Kept.HANGING);
            tail(finishes(), Cloth.Kept.HANGING);
        });
    }

    private void cross(Matcher said) {
        if (said.group(1).equals(said.group(6))
                || said.group(4).equals("over") != said.group(2).equals("front")) {
            throw new Unclear("That can't be done: “" + said.group() + "”");
        }
        backHalfComesToTheFront = said.group(1).equals("back")
                && said.group(2).equals("front")
                && said.group(7).equals("behind");
        comesUp = comesUp(said.group(3));
        group = count(said.group(5));
    }

    private void goOn(Matcher said) {
        int left = ends() % group;
        int told = said.group(1) == null ? 0 : Integer.parseInt(said.group(1));
        if (left != told) {
            throw new Unclear(left + " ends are left for the last group, not " + told);
        }
    }

    @Override
    ClothRow row(int number, Side from, Optional<String> told) {
        ClothRow.ComesUp up = number % 2 == 1 ? comesUp : next.orElse(comesUp);
        told.ifPresent(line -> agree(from, up, line));
        if (number > 1 && (!turnSaid || changeFacesAtTheSide)) {
            firstHalfInFront = !firstHalfInFront;
        }
        List<Passes> halves = List.of(new Passes(), new Passes());
        List<ClothRow.ComesUp> gaps = new ArrayList<>();
        boolean front = firstHalfInFront;
        for (int at = 0; at < ends(); ) {
            int last = Math.min(at + (at == 0 && number == 1 ? folded : group), ends()) - 1;
            halves.get(0).past(end(from, at), end(from, last), front);
            halves.get(1).past(end(from, at), end(from, last), !front);
            if (last < ends() - 1) {
                gaps.add(up);
                front = front != backHalfComesToTheFront;
            }
            at = last + 1;
        }
        firstHalfInFront = front;
        return new ClothRow(from, halves, gaps);
    }
}
