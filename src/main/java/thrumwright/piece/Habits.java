package thrumwright.piece;

import java.util.Map;
import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;

/**
 * How this weaver measures and cuts.
 *
 * @param units the units to show
 * @param widthsOf what a cut is held against when counting widths
 * @param step cuts are rounded up to a multiple of this
 * @param tail left hanging at each end of a yarn
 * @param tie for tying a cord to a post, at each end
 * @param ease share of the length that is laid in before beating, 0 to 1
 * @param handful longest comfortable butterfly
 * @param overlap how far two butterflies of one yarn overlap
 */
public record Habits(
        UnitSystem units,
        WidthsOf widthsOf,
        Length step,
        Length tail,
        Length tie,
        double ease,
        Length handful,
        Length overlap) {
    /** What a cut is held against. */
    public enum WidthsOf {
        /** The nominal width of the warp. */
        WARP,
        /** The loom's width over both posts; without posts the warp's. */
        LOOM
    }

    public Habits {
        Objects.requireNonNull(units);
        Objects.requireNonNull(widthsOf);
        if (tail.mm() > 5000 || tie.mm() > 5000) {
            throw new BadMeasure("habits.tails", Map.of());
        }
        if (!(step.mm() >= 0.1 && step.mm() <= 1000)) {
            throw new BadMeasure("habits.step", Map.of("step", step));
        }
        if (!(ease >= 0 && ease <= 1)) {
            throw new BadMeasure("habits.ease", Map.of());
        }
        if (!(handful.mm() >= 200 && handful.mm() <= 100_000)) {
            throw new BadMeasure("habits.butterfly", Map.of("length", handful));
        }
        if (!(overlap.mm() <= handful.mm() / 2)) {
            throw new BadMeasure("habits.overlap", Map.of("overlap", overlap));
        }
    }

    /** Ease 3 %, butterflies of 4 m that overlap by 5 cm (all from memory); tails and ties of 15 cm (common practice, no source). */
    public static Habits usual(UnitSystem units) {
        boolean inches = units == UnitSystem.INCHES;
        Length hand = inches ? Length.of(6, Unit.INCH) : Length.of(15, Unit.CENTIMETRE);
        return new Habits(
                units,
                WidthsOf.WARP,
                inches ? Length.of(0.5, Unit.INCH) : Length.of(1, Unit.CENTIMETRE),
                hand,
                hand,
                0.03,
                inches ? Length.of(4.5, Unit.YARD) : Length.of(4, Unit.METRE),
                inches ? Length.of(2, Unit.INCH) : Length.of(5, Unit.CENTIMETRE));
    }

    public Habits withUnits(UnitSystem other) {
        return new Habits(other, widthsOf, step, tail, tie, ease, handful, overlap);
    }

    public Habits withWidthsOf(WidthsOf other) {
        return new Habits(units, other, step, tail, tie, ease, handful, overlap);
    }

    public Habits withStep(Length other) {
        return new Habits(units, widthsOf, other, tail, tie, ease, handful, overlap);
    }

    public Habits withTail(Length other) {
        return new Habits(units, widthsOf, step, other, tie, ease, handful, overlap);
    }

    public Habits withTie(Length other) {
        return new Habits(units, widthsOf, step, tail, other, ease, handful, overlap);
    }

    /** @param other share, 0 to 1 */
    public Habits withEase(double other) {
        return new Habits(units, widthsOf, step, tail, tie, other, handful, overlap);
    }

    public Habits withHandful(Length other) {
        return new Habits(units, widthsOf, step, tail, tie, ease, other, overlap);
    }

    public Habits withOverlap(Length other) {
        return new Habits(units, widthsOf, step, tail, tie, ease, handful, other);
    }
}
