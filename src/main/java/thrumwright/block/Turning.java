package thrumwright.block;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** How a hem is turned to the back. */
public sealed interface Turning {
    /** Folded back once. */
    record Once() implements Turning {
        @Override
        public Kind kind() {
            return Kind.ONCE;
        }
    }

    /**
     * Turned in first, then folded back.
     *
     * @param first how far from the hem's outer edge the first turn lies
     */
    record Twice(Length first) implements Turning {
        public Twice {
            Objects.requireNonNull(first);
            if (!(first.mm() > 0)) {
                throw new BadMeasure("hem.first-turn", Map.of());
            }
        }

        @Override
        public Kind kind() {
            return Kind.TWICE;
        }
    }

    /** Folded back once, after both its corners were turned in at 45°. */
    record Mitred() implements Turning {
        @Override
        public Kind kind() {
            return Kind.MITRED;
        }
    }

    /**
     * Folded back once, however little of it there is, and covered with the warp ends beyond it by a band of cloth that is
     * sewn on along both its long edges.
     *
     * @param width of the band
     * @param thickness of the band; empty: that of a usual cotton tape
     */
    record Faced(Length width, Optional<Length> thickness) implements Turning {
        /** Cotton tape, mm (from memory). */
        public static final double TAPE = 0.5;

        public Faced {
            Objects.requireNonNull(thickness);
            if (!(width.mm() > 0 && width.mm() <= 200)) {
                throw new BadMeasure("hem.band-width", Map.of("width", width));
            }
            if (thickness.isPresent()
                    && !(thickness.get().mm() > 0 && thickness.get().mm() <= 10)) {
                throw new BadMeasure("hem.band-thickness", Map.of("thickness", thickness.get()));
            }
        }

        /** In mm. */
        public double thick() {
            return thickness.map(Length::mm).orElse(TAPE);
        }

        @Override
        public Kind kind() {
            return Kind.FACED;
        }
    }

    /** The kinds of turning. */
    enum Kind {
        ONCE,
        TWICE,
        MITRED,
        FACED
    }

    Kind kind();
}
