package thrumwright.weaver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.block.Side;

/** Plain picks in parts side by side, each with a yarn of its own. */
final class SlitHands extends PickHands {
    private static final Pattern RUN = Pattern.compile("(\\d+) of (\\d+) ends");

    private final List<Integer> parts = new ArrayList<>();
    private boolean turns;
    private boolean oneShed;

    SlitHands(int ends) {
        super(ends);
        when("Part the warp into (\\d+) parts, from the left: (.*)\\.", this::part);
        when("Each has a length of yarn of its own, which turns back at the slits\\.", said -> turns = true);
        when("In each part begin at its (left|right)\\.", said -> begin(side(said.group(1))));
        when("Leave a tail of .* hanging there, at the back\\.", said -> tails(begins()));
        when(
                "Take all parts through one shed, one after the other, as if they were one pick\\.",
                said -> oneShed = true);
        lets("The slits are not sewn up\\.");
        when("Each yarn ends at the (left|right) of its part\\.", said -> finish(side(said.group(1))));
        when("Leave a tail of .* there, at the back\\.", said -> tails(finishes()));
    }

    private void tails(Side side) {
        parts.forEach(part -> tail(side, Cloth.Kept.HANGING));
    }

    private void part(Matcher said) {
        int count = Integer.parseInt(said.group(1));
        Matcher alike = Pattern.compile("(\\d+) ends each").matcher(said.group(2));
        if (alike.matches()) {
            add(count, Integer.parseInt(alike.group(1)));
        }
        Matcher run = RUN.matcher(said.group(2));
        while (run.find()) {
            add(Integer.parseInt(run.group(1)), Integer.parseInt(run.group(2)));
        }
        if (parts.size() != count || parts.stream().mapToInt(Integer::intValue).sum() != ends()) {
            throw new Unclear("That makes no " + count + " parts of " + ends() + " ends: “" + said.group() + "”");
        }
    }

    private void add(int count, int size) {
        for (int i = 0; i < count; i++) {
            parts.add(size);
        }
    }

    @Override
    ClothRow row(int number, Side from, Optional<String> told) {
        if (!turns || !oneShed) {
            throw new Unclear("What does a yarn do at a slit?");
        }
        Passes whole = super.row(number, from, told).yarns().get(0);
        List<Passes> yarns = new ArrayList<>();
        int first = 0;
        for (int size : parts) {
            yarns.add(whole.among(first, first + size));
            first += size;
        }
        return new ClothRow(from, yarns, List.of());
    }
}
