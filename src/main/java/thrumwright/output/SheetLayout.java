package thrumwright.output;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.sheet.Booklet;
import thrumwright.sheet.StepSheet;

/**
 * Lays out what a piece's sheet consists of, each section by itself.
 *
 * @param name of the weaver among others whose sheet it is, may be blank; empty if the sheet is nobody's own
 */
public record SheetLayout(
        Plan plan, Optional<String> name, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
    /** What is usually printed of a piece. */
    public static SheetPages of(Plan plan, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
        return new SheetLayout(plan, Optional.empty(), setup, fonts, palette, locale).pages(SheetSection.USUAL);
    }

    /** One section by itself. */
    public SheetPages section(SheetSection section) {
        return switch (section) {
            case CUTS -> cuts();
            case BOOKLET -> booklet();
            default -> ChapterPages.of(plan, setup, fonts, palette, locale);
        };
    }

    private SheetPages booklet() {
        Booklet booklet = Booklet.of(List.of(sheet()), locale);
        return new BookletPages(booklet, plan, plan.piece().title(), setup, palette, locale).laidOut(fonts);
    }

    private SheetPages cuts() {
        return new CutPages(sheet(), List.of(), plan, setup, palette, locale).laidOut(fonts);
    }

    private StepSheet sheet() {
        return name.map(whose -> StepSheet.of(plan, whose, locale)).orElseGet(() -> StepSheet.of(plan, locale));
    }

    /** Several sections one behind the other, in their order, with pages counted through. */
    public SheetPages pages(Collection<SheetSection> sections) {
        return joined(SheetSection.of(sections).stream().map(this::section).toList());
    }

    /** Sections that are laid out already, as one. */
    public SheetPages joined(Collection<SheetPages> sections) {
        return SheetPages.together(plan.piece().title(), List.copyOf(sections));
    }
}
