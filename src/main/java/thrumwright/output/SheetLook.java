package thrumwright.output;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Yarn;

/**
 * What a step sheet looks like.
 *
 * @param coloured whether yarns keep their colour; otherwise everything is black, white and grey, with yarns told apart
 */
public record SheetLook(PageSetup setup, boolean coloured) {
    public SheetLook {
        Objects.requireNonNull(setup);
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
        return SheetLayout.of(plan, setup, fonts, palette(plan), locale);
    }
}
