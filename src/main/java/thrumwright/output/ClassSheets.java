package thrumwright.output;

import java.io.IOException;
import java.io.OutputStream;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.html.ClassHtml;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.SheetSource;
import thrumwright.output.page.Stopped;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.ClassText;
import thrumwright.sheet.SheetMark;
import thrumwright.sheet.WarpingSheet;
import thrumwright.sheet.WarpingText;
import thrumwright.sheet.WrittenClass;

/**
 * Writes all sheets of a class in any of their forms: its common lists first, then every loom's own sheet and, on pages, a booklet for all.
 *
 * @param fonts asked for only by forms that have any
 */
public record ClassSheets(ClassPlan plan, SheetLook look, Supplier<Fonts> fonts, Locale locale) {
    /**
     * Everything in one file, or for a {@linkplain SheetForm#paged() paged} form in pages numbered through.
     *
     * @param name of the file, or for a paged form what the names of its pages begin with
     * @param dpi dots per inch (25.4 mm) of PNG pages, 20 or more
     * @param progress is told of every sheet
     * @throws Stopped if the work is asked to stop
     * @throws IOException if the sheets can't be put into that form
     * @throws E as {@code files} does
     */
    public <E extends Exception> void together(
            SheetForm form, String name, double dpi, Progress progress, SheetFiles.Taker<E> files)
            throws IOException, E {
        switch (form) {
            case PDF -> files.take(name, out -> pdf(progress, out));
            case PNG, SVG -> {
                ClassPages pages = pages(fonts.get());
                int page = 0;
                for (int i = 0; i < pages.count(); i++) {
                    progress.reached(i, pages.count());
                    page = pages(printed(pages).sheet(i), form, name, page, dpi, files);
                }
                progress.reached(pages.count(), pages.count());
            }
            case HTML -> {
                Fonts loaded = fonts.get();
                ClassPages drawn = cards(loaded);
                ClassHtml.Page page = ClassHtml.together(drawn.written(), warping(), cardsOf(drawn), loaded, palette());
                files.take(name, out -> page.write(out, progress));
            }
            case TEXT -> {
                WrittenClass written = written();
                StringBuilder text = new StringBuilder();
                for (int i = 0; i < count(); i++) {
                    progress.reached(i, count());
                    text.append(i == 0 ? "" : "\n\n").append(text(written, i));
                }
                progress.reached(count(), count());
                files.take(name, SheetFiles.text(text.toString()));
            }
        }
    }

    /**
     * A file for the lists and one for each loom, or for a paged form one for each of their pages.
     *
     * @param name what the names of all files begin with, with or without the form's ending
     * @param dpi dots per inch (25.4 mm) of PNG pages, 20 or more
     * @param progress is told of every sheet
     * @throws Stopped if the work is asked to stop
     * @throws IOException if the sheets can't be put into that form
     * @throws E as {@code files} does
     */
    public <E extends Exception> void each(
            SheetForm form, String name, double dpi, Progress progress, SheetFiles.Taker<E> files)
            throws IOException, E {
        if (form.onPages()) {
            eachOnPages(form, name, dpi, progress, files);
            return;
        }
        List<String> names = names(form, name);
        IntFunction<String> texts = form == SheetForm.HTML ? html() : texts();
        for (int i = 0; i < names.size(); i++) {
            progress.reached(i, names.size());
            String text = texts.apply(i);
            files.take(names.get(i), SheetFiles.text(text));
        }
        progress.reached(names.size(), names.size());
    }

    private IntFunction<String> texts() {
        WrittenClass written = written();
        return i -> text(written, i);
    }

    private IntFunction<String> html() {
        Fonts loaded = fonts.get();
        ClassPages drawn = cards(loaded);
        IntFunction<Optional<SheetPages>> cards = cardsOf(drawn);
        return i -> ClassHtml.one(drawn.written(), warping(), cards, i, loaded, palette());
    }

    private ClassPages cards(Fonts loaded) {
        return new ClassPages(plan, look.setup(), EnumSet.of(SheetSection.CARDS), loaded, palette(), locale);
    }

    /** Those of each loom, from 0; none if they aren't wanted. */
    private IntFunction<Optional<SheetPages>> cardsOf(ClassPages drawn) {
        if (!look.sections().contains(SheetSection.CARDS)) {
            return loom -> Optional.empty();
        }
        SheetSource all = printed(drawn);
        return loom -> Optional.of(all.sheet(loom + 1));
    }

    private <E extends Exception> void eachOnPages(
            SheetForm form, String name, double dpi, Progress progress, SheetFiles.Taker<E> files)
            throws IOException, E {
        List<String> names = names(form, name);
        SheetSource pages = printed(pages(fonts.get()));
        for (int i = 0; i < names.size(); i++) {
            progress.reached(i, names.size());
            SheetPages sheet = pages.sheet(i);
            if (form == SheetForm.PDF) {
                files.take(names.get(i), out -> PdfFile.write(sheet, out));
            } else {
                pages(sheet, form, names.get(i), 0, dpi, files);
            }
        }
        progress.reached(names.size(), names.size());
    }

    /**
     * The names of the files that {@link #each} makes, all different on every system; those of pages begin with them.
     *
     * @param name what they begin with, with or without the form's ending
     */
    public List<String> names(SheetForm form, String name) {
        List<String> all = FileNames.of(plan.set(), form.stem(name), form.ending());
        if (!form.onPages()) {
            return all.subList(0, count());
        }
        ClassPages pages = pages(fonts.get());
        return IntStream.range(0, pages.count())
                .mapToObj(sheet -> all.get(pages.place(sheet)))
                .toList();
    }

    private int count() {
        return 1 + plan.plans().size();
    }

    private WrittenClass written() {
        return new WrittenClass(plan, locale);
    }

    private Palette palette() {
        return look.palette(plan.plans().get(0));
    }

    private ClassPages pages(Fonts loaded) {
        return new ClassPages(plan, look.setup(), look.sections(), loaded, palette(), locale);
    }

    private void pdf(Progress progress, OutputStream out) throws IOException {
        Fonts loaded = fonts.get();
        ClassPages pages = pages(loaded);
        PdfFile.write(pages.title(), printed(pages), out, progress);
    }

    /** Each sheet with the date, and a mark of its own. */
    private SheetSource printed(ClassPages pages) {
        return new SheetSource() {
            @Override
            public int count() {
                return pages.count();
            }

            @Override
            public SheetPages sheet(int index) {
                return look.printed(pages.sheet(index), () -> mark(pages.written(), pages.place(index)), locale);
            }
        };
    }

    private String mark(WrittenClass written, int place) {
        return place == 0 || place > plan.plans().size()
                ? SheetMark.of(plan, written.lists(), locale)
                : SheetMark.of(written, place - 1);
    }

    /** Writes all pages of a sheet, the first under the number after {@code before}; gives the last number. */
    private <E extends Exception> int pages(
            SheetPages sheet, SheetForm form, String name, int before, double dpi, SheetFiles.Taker<E> files)
            throws IOException, E {
        for (int page = 0; page < sheet.count(); page++) {
            files.take(form.pageName(name, before + page), SheetFiles.page(sheet, page, form, dpi));
        }
        return before + sheet.count();
    }

    private String text(WrittenClass written, int index) {
        if (index == 0) {
            return ClassText.of(written.lists(), locale);
        }
        String sheet = written.text(index - 1);
        Plan loom = plan.plans().get(index - 1);
        return warping() ? sheet + "\n" + WarpingText.of(WarpingSheet.of(loom, locale)) : sheet;
    }

    private boolean warping() {
        return look.sections().contains(SheetSection.WARPING);
    }
}
