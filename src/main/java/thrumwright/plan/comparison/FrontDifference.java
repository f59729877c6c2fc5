package thrumwright.plan.comparison;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import thrumwright.plan.Finish;

/** Something in which the two finished ends differ when seen from the front. */
public sealed interface FrontDifference {
    /** In what two bands can differ. */
    enum Aspect {
        /** One of the ends has no such band. */
        MISSING,
        /** How it is worked. */
        PATTERN,
        COLOUR,
        /** Height, or number of rows. */
        AMOUNT,
        /** A lean that isn't turned over, as a mirror would. */
        LEAN
    }

    /**
     * Two bands that answer each other.
     *
     * @param aspects at least one
     */
    record Bands(Optional<FrontBand> start, Optional<FrontBand> top, Set<Aspect> aspects) implements FrontDifference {
        public Bands {
            Objects.requireNonNull(start);
            Objects.requireNonNull(top);
            aspects = Set.copyOf(aspects);
        }

        public boolean only(Aspect aspect) {
            return aspects.equals(Set.of(aspect));
        }
    }

    /**
     * Finished hem depths.
     *
     * @param start in mm; empty if that end has no hem
     * @param top in mm; empty if that end has no hem
     */
    record Depths(Optional<Double> start, Optional<Double> top) implements FrontDifference {}

    /** Fringes; empty where none hangs. */
    record Fringes(Optional<Finish> start, Optional<Finish> top) implements FrontDifference {}
}
