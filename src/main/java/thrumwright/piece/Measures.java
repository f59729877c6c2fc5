package thrumwright.piece;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import thrumwright.measure.Length;
import thrumwright.measure.Refused;

/**
 * What the weaver measured while weaving, step by step. What is planned stays as it is; what follows from both is worked
 * out beside it.
 *
 * @param all of different steps, none of them empty
 */
public record Measures(List<MeasuredStep> all) {
    public static final Measures NONE = new Measures(List.of());

    /** The key of the step in which the design is ended. */
    public static final String DESIGN = "design/stop";

    /** @throws IllegalArgumentException if a step is there twice; the message is for the user */
    public Measures {
        List<MeasuredStep> measured = new ArrayList<>();
        Set<String> known = new HashSet<>();
        for (MeasuredStep each : all) {
            if (!each.isEmpty()) {
                measured.add(each);
                if (!known.add(each.step())) {
                    throw new Refused("measured.twice", Map.of("step", each.step()));
                }
            }
        }
        all = List.copyOf(measured);
    }

    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** What was measured of a step, perhaps nothing. */
    public MeasuredStep of(String step) {
        return all.stream()
                .filter(each -> each.step().equals(step))
                .findFirst()
                .orElseGet(() -> MeasuredStep.nothing(step));
    }

    /** The height reached in a step, mm, above 0; empty if it wasn't measured. */
    public Optional<Double> height(String step) {
        return of(step).height().map(Length::mm);
    }

    /** With what is known of one step now. */
    public Measures with(MeasuredStep other) {
        List<MeasuredStep> more = new ArrayList<>(all);
        more.removeIf(each -> each.step().equals(other.step()));
        more.add(other);
        return new Measures(more);
    }

    /** Those of the steps that are still there. */
    public Measures within(Predicate<String> there) {
        return new Measures(all.stream().filter(each -> there.test(each.step())).toList());
    }
}
