package thrumwright.piece;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import thrumwright.measure.Refused;

/**
 * How far a piece is woven: of every step that was begun, when each of its rows was done, in the order of the rows.
 * Nothing is planned by it.
 *
 * @param steps with different keys, in the order in which they were begun
 */
public record Ticks(List<Stepped> steps) {
    public static final Ticks NONE = new Ticks(List.of());

    /** The most steps, and the most rows of one of them. */
    public static final int MOST = 20_000;

    /**
     * The rows of one step that are done.
     *
     * @param step the step's key on the sheet, which stays the same whatever its number
     * @param rows when each was done, from the first row; not empty
     */
    public record Stepped(String step, List<LocalDateTime> rows) {
        public Stepped {
            rows = List.copyOf(rows);
            if (step.isBlank() || rows.isEmpty() || rows.size() > MOST) {
                throw new Refused("ticks.step", Map.of("step", step, "most", MOST));
            }
        }

        private Stepped first(int count) {
            return new Stepped(step, rows.subList(0, count));
        }
    }

    /** @throws IllegalArgumentException if a step is there twice; the message is for the user */
    public Ticks {
        steps = List.copyOf(steps);
        Set<String> known = new HashSet<>();
        for (Stepped each : steps) {
            if (!known.add(each.step())) {
                throw new Refused("ticks.twice", Map.of("step", each.step()));
            }
        }
    }

    public boolean isEmpty() {
        return steps.isEmpty();
    }

    /** How many rows of a step are done, 0 or more. */
    public int done(String step) {
        return of(step).map(each -> each.rows().size()).orElse(0);
    }

    /** When the last row that is done of a step was; empty if none is. */
    public Optional<LocalDateTime> last(String step) {
        return of(step).map(each -> each.rows().get(each.rows().size() - 1));
    }

    private Optional<Stepped> of(String step) {
        return steps.stream().filter(each -> each.step().equals(step)).findFirst();
    }

    /** One more row of a step. */
    public Ticks with(String step, LocalDateTime when) {
        List<LocalDateTime> rows = new ArrayList<>(of(step).map(Stepped::rows).orElse(List.of()));
        rows.add(when);
        Stepped more = new Stepped(step, rows);
        if (of(step).isPresent()) {
            return new Ticks(steps.stream()
                    .map(each -> each.step().equals(step) ? more : each)
                    .toList());
        }
        List<Stepped> all = new ArrayList<>(steps);
        all.add(more);
        return new Ticks(all);
    }

    /** One row of a step fewer; as it is if none is done. */
    public Ticks without(String step) {
        return within(key -> done(key) - (key.equals(step) ? 1 : 0));
    }

    /**
     * Those that still have a row.
     *
     * @param rows how many rows a step has, by its key; 0 or fewer for one that isn't there
     */
    public Ticks within(ToIntFunction<String> rows) {
        return new Ticks(steps.stream()
                .flatMap(each -> {
                    int count = Math.min(each.rows().size(), rows.applyAsInt(each.step()));
                    return count > 0 ? Optional.of(each.first(count)).stream() : Optional.<Stepped>empty().stream();
                })
                .toList());
    }
}
