package thrumwright.output;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.card.CardPages;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.sheet.Booklet;
import thrumwright.sheet.RecordSheet;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.WarpingSheet;

/**
 * Lays out what a piece's sheet consists of, each section by itself.
 *
 * @param whose among others
 */
public record SheetLayout(Plan plan, Whose whose, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
    /**
     * Whose sheet it is.
     *
     * @param sheet of a weaver among others, in words; empty if the sheet is nobody's own
     * @param own what a booklet for many looms leaves to this one
     */
    public record Whose(Optional<StepSheet> sheet, List<Booklet.Own> own) {
        /** The sheet of a piece that only one weaver weaves. */
        public static final Whose NOBODYS = new Whose(Optional.empty(), List.of());

        public Whose {
            own = List.copyOf(own);
        }
    }

    /** What is usually printed of a piece. */
    public static SheetPages of(Plan plan, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
        return new SheetLayout(plan, Whose.NOBODYS, setup, fonts, palette, locale).pages(SheetSection.USUAL);
    }

    /** One section by itself. */
    public SheetPages section(SheetSection section) {
        return section(section, sheet());
    }

    private SheetPages section(SheetSection section, StepSheet sheet) {
        return switch (section) {
            case WARPING -> warping();
            case CUTS -> new CutPages(sheet, whose.own(), plan, setup, palette, locale).laidOut(fonts);
            case BOOKLET -> booklet(sheet);
            case CARDS -> CardPages.of(plan, sheet, setup, fonts, palette, locale);
            case RECORD -> record(sheet);
        };
    }

    private SheetPages warping() {
        return new WarpingPages(WarpingSheet.of(plan, locale), plan, setup, palette, locale).laidOut(fonts);
    }

    private SheetPages booklet(StepSheet sheet) {
        Booklet booklet = Booklet.of(sheet, locale);
        return new BookletPages(booklet, plan, plan.piece().title(), setup, palette, locale).laidOut(fonts);
    }

    private SheetPages record(StepSheet sheet) {
        RecordSheet record = RecordSheet.of(plan, sheet, locale);
        return new RecordPages(record, setup, palette, locale).laidOut(fonts);
    }

    private StepSheet sheet() {
        return whose.sheet().orElseGet(() -> StepSheet.of(plan, locale));
    }

    /** Several sections one behind the other, in their order, with pages counted through. */
    public SheetPages pages(Collection<SheetSection> sections) {
        return pages(sections, sheet());
    }

    /** The same of a sheet that is written already. */
    SheetPages pages(Collection<SheetSection> sections, StepSheet sheet) {
        return joined(SheetSection.of(sections).stream()
                .map(section -> section(section, sheet))
                .toList());
    }

    /** Sections that are laid out already, as one. */
    public SheetPages joined(Collection<SheetPages> sections) {
        return SheetPages.together(plan.piece().title(), List.copyOf(sections));
    }
}
