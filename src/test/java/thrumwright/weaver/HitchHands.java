package thrumwright.weaver;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import thrumwright.block.Side;

/** Two half hitches on each group. */
final class HitchHands extends Hands {
    private int first;
    private int group;
    private int hitches;

    HitchHands(int ends) {
        super(ends);
        lets("Push the row down, so that the hitches lie close on what is woven\\.");
        lets("Draw it tight\\.");
        when("Take " + OUTERMOST + "\\.", said -> first = outermost(said, 1, begins()));
        when(
                "Go (over|under)(?: (?:it|them))? in (front|back), round (?:(?:it|them) )?(behind|before)(?: (?:it|them))? and (?:up|to the front) again where you came from,"
                        + " under the yarn itself; draw it tight\\.",
                said -> {
                    if (!(said.group(1).equals("over")
                            && said.group(2).equals("front")
                            && said.group(3).equals("behind"))) {
                        throw new Unclear("That is no hitch: “" + said.group() + "”");
                    }
                    hitches = 1;
                });
        when("Do the same once more: that is two half hitches\\.", said -> hitches++);
        when(
                "(?:Go on|Lead the yarn on in front) to the next (end|\\d+ ends), and so on to the other side(?:, where (\\d+) (?:end is|ends are) left for the"
                        + " last group)?\\.",
                this::goOn);
        when(
                "Then work back from there in the same way, beginning with " + OUTERMOST + ": (\\d+) rows in all\\.",
                said -> {
                    if (outermost(said, 1, begins().other()) != first) {
                        throw new Unclear("The row before began with " + first + " ends: “" + said.group() + "”");
                    }
                    rowCount(said.group(5));
                });
    }

    private void goOn(Matcher said) {
        group = count(said.group(1));
        int told = said.group(2) == null ? 0 : Integer.parseInt(said.group(2));
        if (ends() % group != told) {
            throw new Unclear(ends() % group + " ends are left for the last group, not " + told);
        }
    }

    @Override
    ClothRow row(int number, Side from, Optional<String> told) {
        told.filter(line -> !line.equals("two half hitches on each group")).ifPresent(line -> {
            throw new Unclear("What does this mean? “" + line + "”");
        });
        Passes passes = new Passes();
        for (int foot = 0; foot < ends(); ) {
            int head = Math.min(foot + (foot == 0 ? first : group), ends()) - 1;
            for (int hitch = 0; hitch < hitches; hitch++) {
                passes.past(end(from, foot), end(from, head), true);
                passes.past(end(from, head), end(from, foot), false);
                passes.past(end(from, foot), true);
            }
            passes.past(end(from, foot), end(from, head), true);
            foot = head + 1;
        }
        return new ClothRow(from, List.of(passes.fromSideToSide(from, ends())), List.of());
    }
}
