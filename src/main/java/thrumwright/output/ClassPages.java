package thrumwright.output;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.SheetSource;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.Booklet;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.MemberNames;
import thrumwright.sheet.WrittenClass;

/** What is printed for a class: its common lists, then a sheet for every loom, and one booklet for all. */
public final class ClassPages implements SheetSource {
    private final ClassPlan plan;
    private final PageSetup setup;
    private final Set<SheetSection> sections;
    private final Fonts fonts;
    private final Palette palette;
    private final Locale locale;
    private final MemberNames names;
    private final WrittenClass written;
    private final List<Integer> sheets = new ArrayList<>();
    private Optional<Booklet> booklet = Optional.empty();

    /**
     * @param sections what is printed for the looms, and whether the booklet is
     * @param palette the same for all, so that a yarn looks alike on every sheet
     */
    public ClassPages(
            ClassPlan plan, PageSetup setup, Set<SheetSection> sections, Fonts fonts, Palette palette, Locale locale) {
        this.plan = plan;
        this.setup = setup;
        this.sections = sections;
        this.fonts = fonts;
        this.palette = palette;
        this.locale = locale;
        this.names = MemberNames.of(plan.set(), locale);
        this.written = new WrittenClass(plan, locale);
        sheets.add(0);
        if (!ofLoom().isEmpty()) {
            IntStream.rangeClosed(1, looms()).forEach(sheets::add);
        }
        if (sections.contains(SheetSection.BOOKLET)) {
            sheets.add(looms() + 1);
        }
    }

    private int looms() {
        return plan.plans().size();
    }

    /** What each loom gets. */
    private Set<SheetSection> ofLoom() {
        EnumSet<SheetSection> own = EnumSet.noneOf(SheetSection.class);
        own.addAll(sections);
        own.remove(SheetSection.BOOKLET);
        return own;
    }

    /** Of the whole. */
    public String title() {
        return ClassSheet.title(plan.set(), locale);
    }

    /** What they say. */
    WrittenClass written() {
        return written;
    }

    /** The lists, one for each loom, and the booklet, as far as they are printed. */
    @Override
    public int count() {
        return sheets.size();
    }

    /**
     * What a sheet is, by its place among all that there could be: 0 the lists, from 1 the looms, then the booklet.
     *
     * @param index from 0
     */
    int place(int index) {
        return sheets.get(index);
    }

    @Override
    public SheetPages sheet(int index) {
        int place = place(index);
        if (place == 0) {
            return ClassLayout.of(written.lists(), setup, fonts, palette, locale);
        }
        return place > looms() ? bookletPages() : loom(place - 1);
    }

    private SheetPages loom(int member) {
        Plan own = plan.plans().get(member);
        SheetLayout.Whose whose = new SheetLayout.Whose(
                Optional.of(written.loom(member)), booklet().own(member));
        SheetLayout layout = new SheetLayout(own, whose, setup, fonts, palette, locale);
        return layout.pages(ofLoom()).titled(own.piece().title() + " · " + names.name(member));
    }

    private SheetPages bookletPages() {
        String title =
                Phrases.of("thrumwright.sheet.class", locale).say("booklet.of", java.util.Map.of("class", title()));
        return new BookletPages(booklet(), plan.plans().get(0), title, setup, palette, locale).laidOut(fonts);
    }

    private Booklet booklet() {
        if (booklet.isEmpty()) {
            booklet = Optional.of(Booklet.of(
                    IntStream.range(0, looms()).mapToObj(written::loom).toList(),
                    IntStream.range(0, looms()).mapToObj(names::name).toList(),
                    locale));
        }
        return booklet.get();
    }
}
