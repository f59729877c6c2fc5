package thrumwright.editor.sheet;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.output.SheetLook;
import thrumwright.output.SheetSection;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;

/**
 * How the weaver wants the sheet, with lengths as they were typed.
 *
 * @param landscape whether the paper lies on its side
 * @param margin free on all four sides; as far as {@link PageSetup} takes it
 * @param distance from the eye to the hanging sheet; as far as {@link PageSetup} takes it
 * @param coloured whether yarns keep their colour on paper
 * @param sections what is printed, at least one
 * @param done whether boxes of rows that are done are ticked
 */
public record SheetChoice(
        Paper paper,
        boolean landscape,
        Length margin,
        Length distance,
        boolean coloured,
        Set<SheetSection> sections,
        boolean done) {
    /** Countries whose usual paper is Letter (Unicode CLDR, supplemental data, paperSize “US-Letter”). */
    private static final Set<String> LETTER =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

    private static final Set<String> INCHES = Set.of("US", "PR");

    /** @throws IllegalArgumentException if margins or distance are out of range, with a sentence that says so */
    public SheetChoice {
        Objects.requireNonNull(paper);
        sections = SheetSection.of(sections);
        new SheetLook(setup(paper, landscape, margin, distance), coloured, sections);
    }

    /** What is usual where somebody lives. */
    public static SheetChoice usual(Locale locale) {
        return usual(locale, INCHES.contains(locale.getCountry()) ? UnitSystem.INCHES : UnitSystem.METRIC);
    }

    /** What is usual where somebody lives, in the units of a piece. */
    public static SheetChoice usual(Locale locale, UnitSystem units) {
        String country = locale.getCountry();
        boolean inches = units == UnitSystem.INCHES;
        return new SheetChoice(
                LETTER.contains(country) ? Paper.LETTER : Paper.A4,
                false,
                Length.parse(inches ? "1/2 in" : "14 mm"),
                Length.parse(inches ? "40 in" : "1 m"),
                true,
                SheetSection.USUAL,
                false);
    }

    private static PageSetup setup(Paper paper, boolean landscape, Length margin, Length distance) {
        return new PageSetup(paper, landscape, margin.mm(), distance.mm() / 1000);
    }

    /** The same for whoever lays pages out. */
    public SheetLook look() {
        return new SheetLook(setup(paper, landscape, margin, distance), coloured, sections).showing(done);
    }

    public SheetChoice withDone(boolean other) {
        return new SheetChoice(paper, landscape, margin, distance, coloured, sections, other);
    }

    public SheetChoice withPaper(Paper other) {
        return new SheetChoice(other, landscape, margin, distance, coloured, sections, done);
    }

    public SheetChoice withLandscape(boolean other) {
        return new SheetChoice(paper, other, margin, distance, coloured, sections, done);
    }

    public SheetChoice withMargin(Length other) {
        return new SheetChoice(paper, landscape, other, distance, coloured, sections, done);
    }

    public SheetChoice withDistance(Length other) {
        return new SheetChoice(paper, landscape, margin, other, coloured, sections, done);
    }

    public SheetChoice withColoured(boolean other) {
        return new SheetChoice(paper, landscape, margin, distance, other, sections, done);
    }

    public SheetChoice with(Set<SheetSection> other) {
        return new SheetChoice(paper, landscape, margin, distance, coloured, other, done);
    }

    /** Prints a section or doesn't; the last that is left stays. */
    public SheetChoice with(SheetSection section, boolean printed) {
        EnumSet<SheetSection> changed = EnumSet.copyOf(sections);
        if (printed) {
            changed.add(section);
        } else {
            changed.remove(section);
        }
        return changed.isEmpty() ? this : with(changed);
    }
}
