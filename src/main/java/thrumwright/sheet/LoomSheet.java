package thrumwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.piece.Place;
import thrumwright.piece.Ticks;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;

/**
 * The steps of a sheet as they are worked at the loom: one after another, row by row.
 *
 * @param steps all, in order; at least one
 */
public record LoomSheet(Plan plan, List<LoomStep> steps) {
    public LoomSheet {
        steps = List.copyOf(steps);
    }

    /** With heights as they come out by what was measured so far. */
    public static LoomSheet of(Plan plan, Locale locale) {
        return new LoomWriter(Plan.asWoven(plan.piece()), locale).sheet();
    }

    static Optional<Work> work(Plan plan, String key) {
        return block(plan, key).flatMap(BlockPlan::work);
    }

    private static Optional<BlockPlan> block(Plan plan, String key) {
        for (Place place : Place.values()) {
            String stem = Step.key(place, "");
            if (key.startsWith(stem)) {
                return plan.end(place).block(key.substring(stem.length()));
            }
        }
        return Optional.empty();
    }

    /** How many rows a step has by its key: 1 for one that is done as a whole, 0 for a block that isn't there. */
    public static int rows(Plan plan, String key) {
        boolean ofBlock = List.of(Place.values()).stream().anyMatch(place -> key.startsWith(Step.key(place, "")));
        if (!ofBlock) {
            return 1;
        }
        return block(plan, key)
                .map(block -> block.work().map(work -> work.rows().size()).orElse(1))
                .orElse(0);
    }

    public LoomStep step(AtLoom at) {
        return steps.get(at.step());
    }

    /** The last row that is done, as the steps go; empty if none is. */
    public Optional<AtLoom> last(Ticks ticks) {
        for (int i = steps.size() - 1; i >= 0; i--) {
            int done = Math.min(
                    steps.get(i).count(), ticks.done(steps.get(i).step().key()));
            if (done > 0) {
                return Optional.of(new AtLoom(i, done - 1));
            }
        }
        return Optional.empty();
    }

    /** The row to be woven now: that after the last one that is done; empty if all is. */
    public Optional<AtLoom> now(Ticks ticks) {
        return last(ticks).map(this::after).orElseGet(() -> Optional.of(new AtLoom(0, 0)));
    }

    /** The row after another; empty after the last of all. */
    public Optional<AtLoom> after(AtLoom at) {
        if (at.row() + 1 < step(at).count()) {
            return Optional.of(new AtLoom(at.step(), at.row() + 1));
        }
        return at.step() + 1 < steps.size() ? Optional.of(new AtLoom(at.step() + 1, 0)) : Optional.empty();
    }

    /**
     * What comes after a row, in a few words.
     *
     * @param phrases those of the loom
     */
    public String next(AtLoom at, Phrases phrases) {
        return after(at).map(next -> told(next, phrases)).orElseGet(() -> phrases.say("next.end"));
    }

    private String told(AtLoom next, Phrases phrases) {
        LoomStep step = step(next);
        return next.row() == 0
                ? phrases.say("next.step", Map.of("step", step.title()))
                : phrases.say(
                        "next.row", Map.of("row", step.rows().get(next.row()).said()));
    }
}
