package thrumwright.plan.finding;

import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;

/** Lengths that can be read off a rule: whole millimetres or sixteenths of an inch. */
record RuleLengths(UnitSystem units) {
    private double part() {
        return units == UnitSystem.INCHES ? Unit.INCH.millimetres() / 16 : 1;
    }

    /** @return never less; empty if nothing is left */
    Optional<Length> up(double mm) {
        return down(Math.ceil(mm / part() - 1e-9) * part());
    }

    /** @return never more; empty if nothing is left */
    Optional<Length> down(double mm) {
        double parts = Math.floor(mm / part() + 1e-9);
        boolean inches = units == UnitSystem.INCHES;
        return parts < 1 ? Optional.empty() : Optional.of(Length.of(inches ? parts / 16 : parts / 10, units.usual()));
    }
}
