package thrumwright.sheet.card;

import java.util.List;
import java.util.Optional;
import thrumwright.plan.BlockPlan;

/**
 * One block on a card.
 *
 * @param number of its step, the same as on the sheet
 * @param ways of its first row, and of its second; from then on they go by turns. Empty where nothing is worked in rows
 * @param large what else must be read from the loom
 * @param ticks how many picks or rows there are to tick, 0 or more
 * @param done how many of them are, 0 or more
 * @param count the same as it is written; empty where there is nothing to tick
 * @param reach height of the upper edge above the lower bar; empty where it doesn't rise
 * @param cut what to cut of which yarn; empty where it takes none
 * @param notes what is read from close by
 * @param pictureSays what its drawing shows, in words
 */
public record CardRow(
        int number,
        BlockPlan block,
        String name,
        List<CardWay> ways,
        List<String> large,
        int ticks,
        int done,
        Optional<CardSaying> count,
        Optional<CardSaying> reach,
        Optional<CardCut> cut,
        List<String> notes,
        String pictureSays) {
    public CardRow {
        ways = List.copyOf(ways);
        large = List.copyOf(large);
        notes = List.copyOf(notes);
    }

    /** Whether the second row must be told too: picks alternate by themselves, leaning rows are told by their signs. */
    public boolean twoWays() {
        boolean picks = block.work().filter(work -> work.block().plainWeave()).isPresent();
        return !picks
                && ways.size() == 2
                && !ways.get(0).brief().equals(ways.get(1).brief());
    }
}
