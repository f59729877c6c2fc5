package thrumwright.piece;

import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Refused;

/**
 * What was measured of one step on the loom.
 *
 * @param step the step's key, as in {@link Ticks}
 * @param height reached, from where the sheet says heights from
 * @param width of the cloth there, from edge to edge
 * @param left what was left of the yarn that was cut for it, all lengths together
 * @param planned how many rows it had before they were changed to make up for what was measured, 1 or more; empty if they
 *     weren't
 */
public record MeasuredStep(
        String step,
        Optional<Length> height,
        Optional<Length> width,
        Optional<Length> left,
        Optional<Integer> planned) {
    /** @throws IllegalArgumentException if the step has no name; the message is for the user */
    public MeasuredStep {
        if (step.isBlank()) {
            throw new Refused("measured.step", Map.of());
        }
    }

    /** Of a step of which nothing is measured yet. */
    public static MeasuredStep nothing(String step) {
        return new MeasuredStep(step, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public boolean isEmpty() {
        return height.isEmpty() && width.isEmpty() && left.isEmpty() && planned.isEmpty();
    }

    public MeasuredStep withHeight(Optional<Length> other) {
        return new MeasuredStep(step, other, width, left, planned);
    }

    public MeasuredStep withWidth(Optional<Length> other) {
        return new MeasuredStep(step, height, other, left, planned);
    }

    public MeasuredStep withLeft(Optional<Length> other) {
        return new MeasuredStep(step, height, width, other, planned);
    }

    /** As many rows were planned first as were, whatever comes later; none if that is what it has again. */
    public MeasuredStep made(int before, int now) {
        int first = planned.orElse(before);
        return new MeasuredStep(step, height, width, left, first == now ? Optional.empty() : Optional.of(first));
    }
}
