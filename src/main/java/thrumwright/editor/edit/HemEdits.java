package thrumwright.editor.edit;

import java.util.Optional;
import thrumwright.block.HemFold;
import thrumwright.block.Support;
import thrumwright.block.Turning;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;

/**
 * What becomes of a hem when another way to turn it is chosen, or one of its measures is typed or taken out.
 *
 * @param phrases with the reasons under {@code reason.…}
 */
public record HemEdits(Phrases phrases) {
    /** Turned another way; what that needs beside is of a usual size. */
    public static HemFold turned(HemFold fold, Turning.Kind kind, UnitSystem units) {
        if (kind == fold.turning().kind()) {
            return fold;
        }
        return fold.withTurning(
                switch (kind) {
                    case ONCE -> new Turning.Once();
                    case TWICE -> new Turning.Twice(usual(units, "5 mm", "1/4 in"));
                    case MITRED -> new Turning.Mitred();
                    case FACED -> new Turning.Faced(usual(units, "25 mm", "1 in"), Optional.empty());
                });
    }

    private static Length usual(UnitSystem units, String metric, String inches) {
        return Length.parse(units == UnitSystem.INCHES ? inches : metric);
    }

    /** With a first turn it is turned twice; one that loses it is turned once. */
    public static HemFold withFirstTurn(HemFold fold, Optional<Length> depth) {
        return fold.withTurning(depth.<Turning>map(Turning.Twice::new)
                .orElseGet(() -> fold.firstTurn().isPresent() ? new Turning.Once() : fold.turning()));
    }

    /** With a band it is faced; one that loses it is turned once. */
    public static HemFold withBandWidth(HemFold fold, Optional<Length> width) {
        return fold.withTurning(width.<Turning>map(wide -> new Turning.Faced(wide, bandThickness(fold)))
                .orElseGet(() -> fold.band().isPresent() ? new Turning.Once() : fold.turning()));
    }

    /** How thick its band is, where that was said. */
    public static Optional<Length> bandThickness(HemFold fold) {
        return fold.band().flatMap(Turning.Faced::thickness);
    }

    /** @throws BadMeasure if it has no band that could be thick */
    public HemFold withBandThickness(HemFold fold, Optional<Length> thickness) {
        if (thickness.isPresent() && fold.band().isEmpty()) {
            throw new BadMeasure(phrases.say("reason.band-width"));
        }
        return fold.withTurning(fold.band()
                .<Turning>map(band -> new Turning.Faced(band.width(), thickness))
                .orElse(fold.turning()));
    }

    /** For another support, as wide as the one before; for a hem that took nothing, of a usual size. */
    public static HemFold withSupport(HemFold fold, Optional<Support.Kind> kind, UnitSystem units) {
        Optional<Length> size = fold.support().map(Support::size);
        return fold.withSupport(kind.map(wanted -> switch (wanted) {
            case BAR -> new Support.RoundBar(size.orElseGet(() -> usual(units, "12 mm", "1/2 in")));
            case SLAT ->
                new Support.Slat(size.orElseGet(() -> usual(units, "25 mm", "1 in")), usual(units, "5 mm", "3/16 in"));
            case STRIP -> new Support.Strip(size.orElseGet(() -> usual(units, "20 mm", "3/4 in")));
        }));
    }

    /** For a support of another size; a hem that took nothing takes a bar. */
    public static HemFold withSupportSize(HemFold fold, Optional<Length> size) {
        return fold.withSupport(size.map(other ->
                fold.support().map(support -> support.withSize(other)).orElseGet(() -> new Support.RoundBar(other))));
    }

    /** How thick its slat is, if it takes one. */
    public static Optional<Length> slatThickness(HemFold fold) {
        return fold.support().filter(Support.Slat.class::isInstance).map(slat -> ((Support.Slat) slat).thickness());
    }

    /**
     * Only a slat has a thickness of its own: what gets one becomes a slat, and a slat that loses it a bar.
     *
     * @throws BadMeasure if nothing is said yet about how wide the slat is
     */
    public HemFold withSlatThickness(HemFold fold, Optional<Length> thickness) {
        if (thickness.isPresent() && fold.support().isEmpty()) {
            throw new BadMeasure(phrases.say("reason.slat-width"));
        }
        return fold.withSupport(fold.support()
                .map(now -> thickness
                        .<Support>map(thick -> new Support.Slat(now.size(), thick))
                        .orElseGet(() -> now instanceof Support.Slat ? new Support.RoundBar(now.size()) : now)));
    }
}
