package thrumwright.output;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import thrumwright.drawing.Fonts;
import thrumwright.measure.Phrases;
import thrumwright.output.html.HtmlFile;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Stopped;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.sheet.PlainText;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.WarpingSheet;
import thrumwright.sheet.WarpingText;

/**
 * Writes a step sheet in any of its forms.
 *
 * @param fonts asked for only by forms that have any
 */
public record SheetFiles(Plan plan, SheetLook look, Supplier<Fonts> fonts, Locale locale) {
    /** Dots per inch of PNG pages unless said otherwise. */
    public static final int USUAL_DPI = 150;
    /** The fewest dots per inch that are asked for. */
    public static final int LEAST_DPI = 30;
    /** The most dots per inch that are asked for. */
    public static final int MOST_DPI = 600;

    /** Takes the files of a sheet, one after another. */
    @FunctionalInterface
    public interface Taker<E extends Exception> {
        /**
         * Takes one.
         *
         * @param name of the file
         * @param content to be written once, at once
         */
        void take(String name, SheetContent content) throws IOException, E;
    }

    /** What goes into a file. It is made while it is written, and nobody keeps all of it. */
    @FunctionalInterface
    public interface SheetContent {
        /**
         * Writes all of it.
         *
         * @param out stays open
         * @throws Stopped if the work is asked to stop
         * @throws IOException if it can't be made, or can't be written there
         */
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Makes all files of a form: one, or for a {@linkplain SheetForm#paged() paged} one a file for each page.
     *
     * @param name of the file, or for a paged form what the names of its pages begin with
     * @param dpi dots per inch (25.4 mm) of PNG pages, 20 or more
     * @throws Stopped if the work is asked to stop
     * @throws IOException if the sheet can't be put into that form
     * @throws E as {@code files} does
     */
    public <E extends Exception> void write(SheetForm form, String name, double dpi, Progress progress, Taker<E> files)
            throws IOException, E {
        switch (form) {
            case PDF -> files.take(name, out -> pdf(progress, out));
            case PNG, SVG -> pages(form, name, dpi, progress, files);
            case HTML -> files.take(name, once(progress, this::html));
            case TEXT -> files.take(name, once(progress, this::plainText));
        }
    }

    private String html() {
        return HtmlFile.of(plan, warping(), cards(), fonts.get(), look.palette(plan), locale);
    }

    private boolean warping() {
        return look.sections().contains(SheetSection.WARPING);
    }

    private Optional<SheetPages> cards() {
        return Optional.of(look)
                .filter(chosen -> chosen.sections().contains(SheetSection.CARDS))
                .map(chosen -> chosen.layout(plan, fonts.get(), locale).section(SheetSection.CARDS))
                .map(pages -> look.printed(plan, pages, locale));
    }

    private void pdf(Progress progress, OutputStream out) throws IOException {
        Fonts loaded = fonts.get();
        PdfFile.write(() -> look.layOut(plan, loaded, locale), out, progress);
    }

    private <E extends Exception> void pages(SheetForm form, String name, double dpi, Progress progress, Taker<E> files)
            throws IOException, E {
        SheetPages pages = look.layOut(plan, fonts.get(), locale);
        for (int page = 0; page < pages.count(); page++) {
            progress.reached(page, pages.count());
            files.take(form.pageName(name, page), page(pages, page, form, dpi));
        }
        progress.reached(pages.count(), pages.count());
    }

    /** One page as a file of a paged form. */
    static SheetContent page(SheetPages pages, int page, SheetForm form, double dpi) {
        return form == SheetForm.SVG
                ? out -> SvgFile.write(pages, page, out)
                : out -> PngFile.write(PngFile.picture(pages, page, dpi), out);
    }

    private String plainText() {
        String sheet = PlainText.of(StepSheet.of(plan, locale), Phrases.of("thrumwright.sheet.steps", locale));
        return warping() ? sheet + "\n" + WarpingText.of(WarpingSheet.of(plan, locale)) : sheet;
    }

    /** A text that is made in one go. */
    private static SheetContent once(Progress progress, Supplier<String> making) throws Stopped {
        progress.reached(0, 1);
        String text = making.get();
        progress.reached(1, 1);
        return text(text);
    }

    /** A text that is made already. */
    static SheetContent text(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }
}
