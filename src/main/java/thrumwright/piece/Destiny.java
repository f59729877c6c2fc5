package thrumwright.piece;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * What becomes of a piece off the loom.
 *
 * @param madeFor what it is for; empty if nobody said so
 * @param border by how much a board is larger than the piece on every side; 0: it hides behind the piece; empty: as usual
 * @param lined whether its back gets a lining
 * @param cord a cord that is sewn along its edges, if it gets one
 * @param label that is sewn to it, if it gets one
 */
public record Destiny(
        Optional<MadeFor> madeFor,
        Optional<Length> border,
        boolean lined,
        Optional<EdgeCord> cord,
        Optional<Label> label) {
    /** Nobody said anything. */
    public static final Destiny UNSAID =
            new Destiny(Optional.empty(), Optional.empty(), false, Optional.empty(), Optional.empty());

    /** The widest border, mm. */
    private static final double WIDEST = 500;

    public Destiny {
        Objects.requireNonNull(madeFor);
        Objects.requireNonNull(cord);
        Objects.requireNonNull(label);
        if (border.isPresent() && border.get().mm() > WIDEST) {
            throw new BadMeasure("destiny.border", Map.of("border", border.get()));
        }
    }

    /** Whether it is sewn to a board. */
    public boolean mounted() {
        return madeFor.filter(use -> use == MadeFor.MOUNTED || use == MadeFor.FRAMED)
                .isPresent();
    }

    public boolean hung() {
        return madeFor.equals(Optional.of(MadeFor.HUNG));
    }

    public Destiny withMadeFor(Optional<MadeFor> other) {
        return new Destiny(other, border, lined, cord, label);
    }

    public Destiny withBorder(Optional<Length> other) {
        return new Destiny(madeFor, other, lined, cord, label);
    }

    public Destiny withLined(boolean other) {
        return new Destiny(madeFor, border, other, cord, label);
    }

    public Destiny withCord(Optional<EdgeCord> other) {
        return new Destiny(madeFor, border, lined, other, label);
    }

    public Destiny withLabel(Optional<Label> other) {
        return new Destiny(madeFor, border, lined, cord, other);
    }
}
