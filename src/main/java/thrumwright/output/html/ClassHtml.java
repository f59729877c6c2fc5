package thrumwright.output.html;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Markup;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Stopped;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.SheetMark;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.WrittenClass;
import thrumwright.yarn.Yarn;

/** The sheets of a class as pages for a browser. */
public final class ClassHtml {
    private final ClassPlan plan;
    private final boolean warping;
    private final Fonts fonts;
    private final Palette palette;
    private final Locale locale;
    private final Phrases phrases;
    private final WrittenClass written;
    private final IntFunction<Optional<SheetPages>> cards;
    private final Html html = new Html();

    /** What is written for one of them. */
    record OfLoom(Plan plan, StepSheet sheet, boolean warping, Optional<SheetPages> cards) {}

    private ClassHtml(
            WrittenClass written,
            boolean warping,
            IntFunction<Optional<SheetPages>> cards,
            Fonts fonts,
            Palette palette) {
        this.warping = warping;
        this.written = written;
        this.cards = cards;
        this.plan = written.plan();
        this.fonts = fonts;
        this.palette = palette;
        this.locale = written.locale();
        this.phrases = Phrases.of("thrumwright.sheet.class", locale);
    }

    /**
     * All of them as one page, which is written as it is made.
     *
     * @param warping whether each says how the warp is put on
     * @param cards of a loom, from 0, which are drawn on the page, and printed on pages of their own; empty for none
     */
    public static Page together(
            WrittenClass written,
            boolean warping,
            IntFunction<Optional<SheetPages>> cards,
            Fonts fonts,
            Palette palette) {
        return new ClassHtml(written, warping, cards, fonts, palette)::write;
    }

    /** A page that can be written once. */
    @FunctionalInterface
    public interface Page {
        /**
         * Writes it.
         *
         * @throws Stopped if the work is asked to stop
         */
        void write(OutputStream out, Progress progress) throws IOException, Stopped;
    }

    private void write(OutputStream out, Progress progress) throws IOException, Stopped {
        int all = 1 + plan.plans().size();
        Writer letters = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        HtmlFrame.begin(html, written.lists().title(), mark(), style(0));
        for (int i = 0; i < all; i++) {
            progress.reached(i, all);
            int index = i;
            html.within("section", "sheet", () -> sheet(index));
            html.moveTo(letters);
        }
        progress.reached(all, all);
        HtmlFrame.end(html);
        html.moveTo(letters);
        letters.flush();
    }

    /**
     * One of them: at 0 the lists, from 1 on those of the looms.
     *
     * @param warping whether it says how the warp is put on
     */
    public static String one(
            WrittenClass written,
            boolean warping,
            IntFunction<Optional<SheetPages>> cards,
            int index,
            Fonts fonts,
            Palette palette) {
        ClassHtml file = new ClassHtml(written, warping, cards, fonts, palette);
        if (index == 0) {
            HtmlFrame.begin(file.html, written.lists().title(), file.mark());
        } else {
            StepSheet own = file.own(index);
            HtmlFrame.begin(file.html, own.title(), SheetMark.of(written, index - 1), file.style(index - 1));
        }
        file.sheet(index);
        HtmlFrame.end(file.html);
        return file.html.toString();
    }

    private String style(int loom) {
        return cards.apply(loom).map(HtmlCards::style).orElse("");
    }

    private Plan plan(int index) {
        return plan.plans().get(index - 1);
    }

    private void sheet(int index) {
        if (index == 0) {
            lists();
            return;
        }
        HtmlFile.write(
                new OfLoom(plan(index), own(index), warping, cards.apply(index - 1)), html, fonts, palette, locale);
    }

    private StepSheet own(int index) {
        return written.loom(index - 1);
    }

    private String mark() {
        return SheetMark.of(plan, written.lists(), locale);
    }

    private void lists() {
        ClassSheet sheet = written.lists();
        html.line("h1", sheet.title());
        HtmlFile.facts(html, sheet.facts());
        if (!sheet.findings().isEmpty()) {
            html.within("section", "notes", () -> {
                heading("heading.findings");
                html.within("ul", "", () -> sheet.findings().forEach(finding -> html.line("li", finding)));
            });
        }
        heading("heading.shopping");
        html.line("p", sheet.shoppingNote());
        html.within("ul", "", () -> sheet.shopping().forEach(line -> html.ticked("li", line.text())));
        heading("heading.cuts");
        html.line("p", sheet.cutNote());
        sheet.cuts().forEach(this::cuts);
        heading("heading.looms");
        table(sheet.columns(), sheet.looms(), false);
    }

    private void heading(String key) {
        html.line("h2", phrases.say(key));
    }

    private void cuts(ClassSheet.Cuts cuts) {
        html.coloured("h3", cuts.yarn().map(Yarn::colour).map(palette::yarn), cuts.heading());
        table(
                Stream.of("cuts.count", "cuts.length", "cuts.whom")
                        .map(phrases::say)
                        .toList(),
                cuts.lines().stream()
                        .map(line -> List.of(line.count() + " ×", line.length(), line.whom()))
                        .toList(),
                true);
    }

    private void table(List<String> names, List<List<String>> rows, boolean ticked) {
        html.within("table", ticked ? "cuts" : "", () -> {
            html.within(
                    "thead",
                    "",
                    () -> html.within(
                            "tr",
                            "",
                            () -> names.forEach(
                                    name -> html.raw("<th scope=\"col\">" + Markup.escaped(name) + "</th>\n"))));
            html.within("tbody", "", () -> rows.forEach(row -> html.within("tr", "", () -> cells(row, ticked))));
        });
    }

    private void cells(List<String> cells, boolean ticked) {
        for (int i = 0; i < cells.size(); i++) {
            if (i == 0 && ticked) {
                html.ticked("td", cells.get(i));
            } else {
                html.line("td", cells.get(i));
            }
        }
    }
}
