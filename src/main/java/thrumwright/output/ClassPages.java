package thrumwright.output;

import java.util.Locale;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.SheetSource;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.MemberNames;

/** All sheets of a class: its common lists first, then a step sheet for every loom. */
public final class ClassPages implements SheetSource {
    private final ClassPlan plan;
    private final PageSetup setup;
    private final Fonts fonts;
    private final Palette palette;
    private final Locale locale;
    private final MemberNames names;

    /** @param palette the same for all, so that a yarn looks alike on every sheet */
    public ClassPages(ClassPlan plan, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
        this.plan = plan;
        this.setup = setup;
        this.fonts = fonts;
        this.palette = palette;
        this.locale = locale;
        this.names = MemberNames.of(plan.set(), locale);
    }

    /** Of the whole. */
    public String title() {
        return ClassSheet.title(plan.set(), locale);
    }

    /** The lists and one for each loom. */
    @Override
    public int count() {
        return 1 + plan.plans().size();
    }

    /** @param index 0: the lists; from 1: the looms */
    @Override
    public SheetPages sheet(int index) {
        if (index == 0) {
            return ClassLayout.of(plan, setup, fonts, palette, locale);
        }
        int member = index - 1;
        String name = plan.set().members().get(member).name();
        SheetPages pages =
                SheetLayout.of(plan.plans().get(member), name, plan.plans().size() - 1, setup, fonts, palette, locale);
        return pages.titled(pages.title() + " · " + names.name(member));
    }
}
