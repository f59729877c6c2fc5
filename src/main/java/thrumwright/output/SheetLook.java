package thrumwright.output;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Imprint;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.sheet.SheetMark;
import thrumwright.sheet.StepSheet;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Yarn;

/**
 * What a step sheet looks like.
 *
 * @param coloured whether yarns keep their colour; otherwise everything is black, white and grey, with yarns told apart
 * @param written when, if the sheet is to say so
 */
public record SheetLook(PageSetup setup, boolean coloured, Optional<ZonedDateTime> written) {
    public SheetLook {
        Objects.requireNonNull(setup);
        Objects.requireNonNull(written);
    }

    /** Without a date. */
    public SheetLook(PageSetup setup, boolean coloured) {
        this(setup, coloured, Optional.empty());
    }

    /** The same with a date at the foot of every page. */
    public SheetLook written(ZonedDateTime when) {
        return new SheetLook(setup, coloured, Optional.of(when));
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
        SheetPages pages = SheetLayout.of(plan, setup, fonts, palette(plan), locale);
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
