package thrumwright.output;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.Supplier;
import thrumwright.drawing.Fonts;
import thrumwright.measure.Phrases;
import thrumwright.output.html.HtmlFile;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Stopped;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.sheet.PlainText;
import thrumwright.sheet.StepSheet;

/**
 * Writes a step sheet in any of its forms.
 *
 * @param fonts asked for only by forms that have any
 */
public record SheetWriter(Plan plan, SheetLook look, Supplier<Fonts> fonts, Locale locale) {
    /** Dots per inch of PNG pages unless said otherwise. */
    public static final int USUAL_DPI = 150;
    /** The fewest dots per inch that are asked for. */
    public static final int LEAST_DPI = 30;
    /** The most dots per inch that are asked for. */
    public static final int MOST_DPI = 600;

    /** Takes the files of a sheet as they are made. */
    @FunctionalInterface
    public interface Files<E extends Exception> {
        /** @param name of the file */
        void take(String name, byte[] bytes) throws E;
    }

    /**
     * Makes all files of a form: one, or for a {@linkplain SheetForm#paged() paged} one a file for each page.
     *
     * @param name of the file, or for a paged form what the names of its pages begin with
     * @param dpi dots per inch of PNG pages
     * @throws Stopped if the work is asked to stop
     * @throws IOException if the sheet can't be put into that form
     * @throws E as {@code files} does
     */
    public <E extends Exception> void write(SheetForm form, String name, double dpi, Progress progress, Files<E> files)
            throws IOException, E {
        switch (form) {
            case PDF -> files.take(name, pdf(progress));
            case PNG, SVG -> pages(form, name, dpi, progress, files);
            case HTML ->
                files.take(name, once(progress, () -> HtmlFile.of(plan, fonts.get(), look.palette(plan), locale)));
            case TEXT -> files.take(name, once(progress, this::text));
        }
    }

    private byte[] pdf(Progress progress) throws IOException {
        Fonts loaded = fonts.get();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(look.layOut(plan, loaded, locale), loaded, out, progress);
        return out.toByteArray();
    }

    private <E extends Exception> void pages(SheetForm form, String name, double dpi, Progress progress, Files<E> files)
            throws IOException, E {
        SheetPages pages = look.layOut(plan, fonts.get(), locale);
        for (int page = 0; page < pages.count(); page++) {
            progress.reached(page, pages.count());
            files.take(form.pageName(name, page), page(pages, page, form, dpi));
        }
        progress.reached(pages.count(), pages.count());
    }

    /** One page as a file of a paged form. */
    static byte[] page(SheetPages pages, int page, SheetForm form, double dpi) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (form == SheetForm.SVG) {
            SvgFile.write(pages, page, out);
        } else {
            PngFile.write(PngFile.picture(pages, page, dpi), out);
        }
        return out.toByteArray();
    }

    private String text() {
        return PlainText.of(StepSheet.of(plan, locale), Phrases.of("thrumwright.sheet.steps", locale));
    }

    /** What is made in one go. */
    private static byte[] once(Progress progress, Supplier<String> text) throws Stopped {
        progress.reached(0, 1);
        byte[] bytes = text.get().getBytes(StandardCharsets.UTF_8);
        progress.reached(1, 1);
        return bytes;
    }
}
