package thrumwright.piece;

import java.util.Map;
import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;

/** How a loom holds its warp. What is the same question for all kinds is a fact here; else ask by {@link LoomCases}. */
public sealed interface LoomKind {
    /** Answers by kind, so that none is forgotten. */
    <T> T of(LoomCases<T> cases);

    /** Its part of a key in text bundles. */
    String key();

    /** Whether the warp is moved on while it is woven, so that heights above a bar don't hold. */
    default boolean travels() {
        return false;
    }

    /** Whether a warp end goes over both faces of the loom. */
    default boolean goesRound() {
        return false;
    }

    /** A warp end can't be shorter, mm, 0 or more. */
    default double leastEnd(Length open) {
        return goesRound() ? 2 * open.mm() : 0;
    }

    /** What heights are said from before the warp has travelled. */
    default Datum datum() {
        return Datum.LOWER_BAR;
    }

    /** @throws BadMeasure if no warp can stand so on this loom; the message says which can */
    default void check(Sett sett) {
        Objects.requireNonNull(sett);
    }

    /** One layer from a bar below to a bar above, tied on or in figure eights. */
    record BarToBar() implements LoomKind {
        @Override
        public <T> T of(LoomCases<T> cases) {
            return cases.barToBar(this);
        }

        @Override
        public String key() {
            return "bar-to-bar";
        }
    }

    /**
     * The warp winds round both bars in two layers; the front is woven, and the whole can be moved round.
     *
     * @param spacer what keeps the spacing at each bar
     */
    record RoundFrame(Spacer spacer) implements LoomKind {
        public RoundFrame {
            Objects.requireNonNull(spacer);
        }

        @Override
        public <T> T of(LoomCases<T> cases) {
            return cases.roundFrame(this);
        }

        @Override
        public String key() {
            return "round-frame";
        }

        @Override
        public boolean travels() {
            return true;
        }

        @Override
        public boolean goesRound() {
            return true;
        }
    }

    /** What keeps the warp ends apart at a bar. */
    enum Spacer {
        /** A cord twined through the ends. */
        CORD,
        /** A chain of loops worked round them. */
        CHAIN,
        /** A bar with notches, or a spring. */
        BAR
    }

    /**
     * The warp turns back in loops round a bar that travels with it, so that it opens into one length when the bar is drawn out.
     *
     * @param above how far above the lower bar, on the front, the joining bar stands when the weaving begins
     */
    record JoiningBar(Length above) implements LoomKind {
        /** @throws BadMeasure if the bar couldn't be reached */
        public JoiningBar {
            if (above.mm() > 1000) {
                throw new BadMeasure("loom.joining-bar", Map.of("above", above));
            }
        }

        @Override
        public <T> T of(LoomCases<T> cases) {
            return cases.joiningBar(this);
        }

        @Override
        public String key() {
            return "joining-bar";
        }

        @Override
        public boolean travels() {
            return true;
        }

        @Override
        public boolean goesRound() {
            return true;
        }

        @Override
        public Datum datum() {
            return Datum.JOINING_BAR;
        }
    }

    /**
     * The warp turns round what stands at a fixed pitch below and above.
     *
     * @param pitch how closely it stands, in as many a length
     * @param peg what it is
     */
    record Pegged(Sett pitch, Peg peg) implements LoomKind {
        public Pegged {
            Objects.requireNonNull(pitch);
            Objects.requireNonNull(peg);
        }

        @Override
        public <T> T of(LoomCases<T> cases) {
            return cases.pegged(this);
        }

        @Override
        public String key() {
            return peg.name().toLowerCase(java.util.Locale.ROOT);
        }

        @Override
        public Datum datum() {
            return peg.datum;
        }

        @Override
        public void check(Sett sett) {
            new Pitch(this).check(sett);
        }
    }

    /** What the warp turns round at a fixed pitch. */
    enum Peg {
        NAILS(2, Datum.LOWER_NAILS),
        PEGS(2, Datum.LOWER_PEGS),
        NOTCHES(1, Datum.LOWER_NOTCHES);

        private final int ends;
        private final Datum datum;

        Peg(int ends, Datum datum) {
            this.ends = ends;
            this.datum = datum;
        }

        /** How many warp ends come from each at the closest: one on either side, or one through a notch. */
        public int ends() {
            return ends;
        }
    }

    /**
     * The warp lies on a beam and is wound on to another as it is woven.
     *
     * @param waste what of each warp end can't be woven, in all
     */
    record Rollers(Length waste) implements LoomKind {
        /** @throws BadMeasure if so much can't be lost */
        public Rollers {
            if (waste.mm() > 5000) {
                throw new BadMeasure("loom.waste", Map.of("waste", waste));
            }
        }

        @Override
        public <T> T of(LoomCases<T> cases) {
            return cases.rollers(this);
        }

        @Override
        public String key() {
            return "rollers";
        }

        @Override
        public boolean travels() {
            return true;
        }

        @Override
        public double leastEnd(Length open) {
            return waste.mm();
        }

        @Override
        public Datum datum() {
            return Datum.KNOTS;
        }
    }
}
