package thrumwright.output;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Refused;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Yarn;

/**
 * What a sheet looks like.
 *
 * @param coloured whether yarns keep their colour; otherwise everything is black, white and grey, with yarns told apart
 * @param sections what is printed, at least one
 */
public record SheetLook(PageSetup setup, boolean coloured, Set<SheetSection> sections) {
    /** @throws IllegalArgumentException if nothing is to be printed; the message is for the user */
    public SheetLook {
        Objects.requireNonNull(setup);
        sections = SheetSection.of(sections);
        if (sections.isEmpty()) {
            throw new Refused("page.sections", Map.of());
        }
    }

    /** With what is usually printed. */
    public SheetLook(PageSetup setup, boolean coloured) {
        this(setup, coloured, SheetSection.USUAL);
    }

    /** The colours of a plan's drawings. */
    public Palette palette(Plan plan) {
        if (coloured) {
            return Palette.onPaper();
        }
        List<Colour> yarns = plan.piece().yarns().stream().map(Yarn::colour).toList();
        return Palette.blackAndWhite(yarns);
    }

    public SheetPages layOut(Plan plan, Fonts fonts, Locale locale) {
        return layout(plan, fonts, locale).pages(sections);
    }

    /** Lays out any section of a plan's sheet so that it looks like this. */
    public SheetLayout layout(Plan plan, Fonts fonts, Locale locale) {
        return new SheetLayout(plan, SheetLayout.Whose.NOBODYS, setup, fonts, palette(plan), locale);
    }
}
