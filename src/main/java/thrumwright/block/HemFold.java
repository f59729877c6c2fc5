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
 * @param support what the hem is to take so that the piece can hang; empty: nothing
 */
public record HemFold(Tag tag, Optional<Length> firstTurn, Optional<Support> support) implements Block {
    public HemFold {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(firstTurn);
        if (firstTurn.isPresent() && !(firstTurn.get().mm() > 0)) {
            throw new BadMeasure("The first turn of a hem is deeper than 0.");
        }
        Objects.requireNonNull(support);
    }

    /** A hem turned once that takes nothing. */
    public static HemFold once(Tag tag) {
        return new HemFold(tag, Optional.empty(), Optional.empty());
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
        return new HemFold(other, firstTurn, support);
    }
}
