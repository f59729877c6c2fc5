package thrumwright.weaver;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import thrumwright.block.Side;

/** A needle that binds warp ends in groups round picks that are woven. */
final class HemstitchHands extends Hands {
    private static final String PICKS = "(\\d+) picks?";

    private int picks;
    private boolean above;
    private int first;
    private int group;
    private boolean bound;
    private boolean through;
    private boolean toTheFront;

    HemstitchHands(int ends) {
        super(ends);
        lets("Thread the yarn on a blunt needle\\.");
        lets("Then go round (?:it|them)\\.");
        when("Don’t work it yet: first weave " + PICKS + " of what comes above it\\.", said -> round(said, true));
        when("It goes round " + PICKS + " below it, which (?:is|are) woven already\\.", said -> round(said, false));
        when("Lead it (up|down) in front of " + OUTERMOST + ", over " + PICKS + ", to the edge\\.", said -> {
            agree(said, above ? "down" : "up", said.group(6));
            first = outermost(said, 2, begins());
        });
        when(
                "At the edge go behind (?:it|them), back in front of (?:it|them), and behind (?:it|them) once more;"
                        + " draw it snug\\.",
                said -> bound = true);
        when("Then lead it (up|down) behind " + PICKS + ", and bring it to the front in the next gap\\.", said -> {
            agree(said, above ? "up" : "down", said.group(2));
            through = true;
        });
        when(
                "Do the same with the next (end|\\d+ ends), and so on to the other side(?:, where (\\d+) (?:end is|ends are)"
                        + " left for the last group)?\\.",
                this::goOn);
        when("At the last group there is no gap: come to the front round the edge end\\.", said -> toTheFront = true);
    }

    private void round(Matcher said, boolean aboveIt) {
        picks = Integer.parseInt(said.group(1));
        above = aboveIt;
    }

    /** The thread goes to the edge and back over the picks that it is to go round. */
    private void agree(Matcher said, String way, String count) {
        if (!said.group(1).equals(way) || Integer.parseInt(count) != picks) {
            throw new Unclear("That doesn't go round the " + picks + " picks: “" + said.group() + "”");
        }
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
        told.filter(line -> !line.equals("bind each group round the picks")).ifPresent(line -> {
            throw new Unclear("What does this mean? “" + line + "”");
        });
        if (!bound || !through || group == 0) {
            throw new Unclear("How does the thread go round a group?");
        }
        Passes passes = new Passes();
        int head = -1;
        for (int foot = 0; foot < ends(); foot = head + 1) {
            head = Math.min(foot + (foot == 0 ? first : group), ends()) - 1;
            passes.past(end(from, foot), true);
            passes.past(end(from, foot), end(from, head), false);
            passes.past(end(from, head), end(from, foot), true);
            passes.past(end(from, foot), end(from, head), false);
        }
        if (toTheFront) {
            passes.past(end(from, head), true);
        }
        return new ClothRow(from, List.of(passes.fromSideToSide(from, ends())), List.of());
    }
}
