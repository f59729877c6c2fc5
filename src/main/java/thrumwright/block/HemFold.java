package thrumwright.block;

import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * The line along which the hem folds; it has no height. Beside a soumak row it runs along that row's middle, elsewhere
 * along the line where it stands.
 *
 * @param firstTurn for a hem turned twice: how far from the hem's outer edge the first turn lies; empty: turned once
 */
public record HemFold(Tag tag, Optional<Length> firstTurn) implements Block {
    public HemFold {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(firstTurn);
        if (firstTurn.isPresent() && !(firstTurn.get().mm() > 0)) {
            throw new BadMeasure("The first turn of a hem is deeper than 0.");
        }
    }

    /** Whether the hem is turned twice. */
    public boolean turnedTwice() {
        return firstTurn.isPresent();
    }

    @Override
    public HemFold mirrored() {
        return this;
    }

    @Override
    public HemFold withTag(Tag other) {
        return new HemFold(other, firstTurn);
    }
}
