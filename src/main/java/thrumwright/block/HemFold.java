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
 * @param bar thickness of the round bar that the hem is to take as a sleeve; empty: it takes none
 */
public record HemFold(Tag tag, Optional<Length> firstTurn, Optional<Length> bar) implements Block {
    public HemFold {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(firstTurn);
        if (firstTurn.isPresent() && !(firstTurn.get().mm() > 0)) {
            throw new BadMeasure("The first turn of a hem is deeper than 0.");
        }
        if (bar.isPresent() && !(bar.get().mm() > 0 && bar.get().mm() <= 200)) {
            throw new BadMeasure("A bar is thicker than 0 and at most 20 cm, not “" + bar.get() + "”.");
        }
    }

    /** A hem turned once that takes no bar. */
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
        return new HemFold(other, firstTurn, bar);
    }
}
