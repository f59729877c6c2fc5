package thrumwright.output;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.measure.Refused;
import thrumwright.output.page.Imprint;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.sheet.SheetMark;
import thrumwright.sheet.StepSheet;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Yarn;

/**
 * What a sheet looks like.
 *
 * @param coloured whether yarns keep their colour; otherwise everything is black, white and grey, with yarns told apart
 * @param sections what is printed, at least one
 * @param written when, if the sheet is to say so
 * @param done whether boxes of rows that are done are ticked
 */
public record SheetLook(
        PageSetup setup, boolean coloured, Set<SheetSection> sections, Optional<ZonedDateTime> written, boolean done) {
    /** @throws IllegalArgumentException if nothing is to be printed; the message is for the user */
    public SheetLook {
        Objects.requireNonNull(setup);
        Objects.requireNonNull(written);
        sections = SheetSection.of(sections);
        if (sections.isEmpty()) {
            throw new Refused("page.sections", Map.of());
        }
    }

    /** Without a date. */
    public SheetLook(PageSetup setup, boolean coloured, Set<SheetSection> sections) {
        this(setup, coloured, sections, Optional.empty(), false);
    }

    /** With what is usually printed, without a date. */
    public SheetLook(PageSetup setup, boolean coloured) {
        this(setup, coloured, SheetSection.USUAL);
    }

    /** The same with a date at the foot of every page. */
    public SheetLook written(ZonedDateTime when) {
        return new SheetLook(setup, coloured, sections, Optional.of(when), done);
    }

    /** The same with boxes ticked of what is done, or empty ones. */
    public SheetLook showing(boolean whatIsDone) {
        return new SheetLook(setup, coloured, sections, written, whatIsDone);
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
        return printed(plan, layout(plan, fonts, locale).pages(sections), locale);
    }

    /** Lays out any section of a plan's sheet so that it looks like this. */
    public SheetLayout layout(Plan plan, Fonts fonts, Locale locale) {
        return new SheetLayout(
                done ? plan : plan.unticked(), SheetLayout.Whose.NOBODYS, setup, fonts, palette(plan), locale);
    }

    /** Pages of a plan's sheet with date and mark at their feet, if there is a date. */
    public SheetPages printed(Plan plan, SheetPages pages, Locale locale) {
        return printed(pages, () -> SheetMark.of(plan, StepSheet.of(plan, locale), locale), locale);
    }

    /** Pages with date and mark at their feet, if there is a date. */
    SheetPages printed(SheetPages pages, Supplier<String> mark, Locale locale) {
        return written.map(when -> pages.printed(imprint(when, mark.get(), locale)))
                .orElse(pages);
    }

    private static Imprint imprint(ZonedDateTime when, String mark, Locale locale) {
        String date = DateTimeFormatter.ofPattern("d MMM uuuu", locale).format(when);
        Map<String, String> values = Map.of("date", date, "mark", mark);
        return new Imprint(when, Phrases.of("thrumwright.sheet.steps", locale).say("footer.imprint", values));
    }
}
