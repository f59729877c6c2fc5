package thrumwright.output.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Markup;
import thrumwright.output.part.CutPart;
import thrumwright.output.part.SlipPicture;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.Chapter;
import thrumwright.sheet.CutLine;
import thrumwright.sheet.Fact;
import thrumwright.sheet.PictureWords;
import thrumwright.sheet.RowLine;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;

/**
 * A step sheet as one page for a browser: everything within it, boxes to tick, words for every drawing, and good to print.
 * The same piece makes the same text. Empty elements are closed, so that it can be read as XML too.
 */
public final class HtmlFile {
    private final Plan plan;
    private final StepSheet sheet;
    private final Phrases phrases;
    private final PictureWords pictureWords;
    private final HtmlPictures pictures;
    private final Html html;
    private final Set<String> slipped = new HashSet<>();

    private HtmlFile(Html html, Plan plan, StepSheet sheet, Fonts fonts, Palette palette, Locale locale, int steps) {
        this.html = html;
        this.plan = plan;
        this.sheet = sheet;
        this.phrases = Phrases.of("thrumwright.sheet.steps", locale);
        this.pictureWords = new PictureWords(plan, locale);
        this.pictures = new HtmlPictures(plan, fonts, palette, steps);
    }

    /** The whole page. */
    public static String of(Plan plan, Fonts fonts, Palette palette, Locale locale) {
        Html html = new Html();
        StepSheet sheet = StepSheet.of(plan, locale);
        begin(html, sheet.title());
        write(html, plan, sheet, fonts, palette, locale, steps(plan));
        end(html);
        return html.toString();
    }

    /**
     * A sheet, within the body of a page.
     *
     * @param steps how many the page draws in all, 0 or more
     */
    static void write(Html html, Plan plan, StepSheet sheet, Fonts fonts, Palette palette, Locale locale, int steps) {
        new HtmlFile(html, plan, sheet, fonts, palette, locale, steps).write();
    }

    /** How many steps of a sheet are drawn, at most; 0 or more. */
    static int steps(Plan plan) {
        return plan.start().blocks().size() + plan.top().blocks().size();
    }

    /** All that stands before the content of a page. */
    static void begin(Html html, String title) {
        html.raw("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        html.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        html.line("title", title);
        html.raw("<style>\n" + style() + "</style>\n</head>\n<body>\n<main>\n");
    }

    /** All that stands after it. */
    static void end(Html html) {
        html.raw("</main>\n</body>\n</html>\n");
    }

    private void write() {
        html.line("h1", sheet.title());
        facts();
        html.picture(pictures.piece(), pictureWords.piece());
        findings();
        cuts();
        yarns();
        sheet.chapters().forEach(this::chapter);
    }

    private static String style() {
        try (InputStream in = HtmlFile.class.getResourceAsStream("/thrumwright/output/sheet.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void facts() {
        facts(html, sheet.facts());
    }

    static void facts(Html html, List<Fact> facts) {
        html.within(
                "dl",
                "",
                () -> facts.forEach(fact -> {
                    html.line("dt", fact.name());
                    html.line("dd", fact.value());
                }));
    }

    private void findings() {
        if (sheet.findings().isEmpty()) {
            return;
        }
        html.within("section", "notes", () -> {
            html.line("h2", phrases.say("heading.findings"));
            html.within("ul", "", () -> sheet.findings().forEach(finding -> html.line("li", finding)));
        });
    }

    private void cuts() {
        html.line("h2", phrases.say("heading.cuts"));
        html.line("p", sheet.cutNote());
        html.within("table", "", () -> {
            html.within(
                    "thead",
                    "",
                    () -> html.within("tr", "", () -> {
                        for (String key : List.of("cut.count", "cut.length", "cut.widths", "cut.yarn", "cut.for")) {
                            html.raw("<th scope=\"col\">" + Markup.escaped(phrases.say(key)) + "</th>\n");
                        }
                    }));
            html.within("tbody", "", () -> sheet.cuts().forEach(this::cut));
        });
    }

    private void cut(CutLine cut) {
        html.within("tr", "", () -> {
            html.ticked("td", cut.count() + " ×");
            html.line("td", cut.length());
            html.line("td", cut.widths() + " ×");
            html.line("td", cut.whatAndRole());
            html.line("td", CutPart.use(cut, phrases));
        });
    }

    private void yarns() {
        html.line("h2", phrases.say("heading.yarns"));
        html.within("ul", "", () -> sheet.yarns().forEach(line -> html.line("li", line.text())));
    }

    private void chapter(Chapter chapter) {
        html.within("section", "chapter", () -> {
            html.line("h2", chapter.title());
            chapter.opening().forEach(sentence -> html.line("p", sentence));
            chapter.place().ifPresent(place -> {
                Map<String, Integer> numbers = chapter.numbers();
                html.picture(pictures.end(place, numbers), pictureWords.end(place, numbers));
            });
            chapter.steps().forEach(step -> html.within("section", "step", () -> step(step)));
        });
    }

    private void step(Step step) {
        html.ticked("h3", step.number() + " " + step.title());
        step.picture().ifPresent(this::picture);
        if (!step.take().isEmpty()) {
            html.line("p", "take", step.take());
        }
        step.sentences().forEach(sentence -> html.line("p", sentence));
        step.cautions().forEach(caution -> html.line("p", "careful", phrases.say("caution.mark") + " " + caution));
        if (!step.rows().isEmpty()) {
            html.within("ul", "rows", () -> step.rows().forEach(this::row));
        }
        if (!step.reach().isEmpty()) {
            html.line("p", "reach", step.reach());
        }
    }

    private void row(RowLine row) {
        html.ticked("li", row.label() + " " + row.arrow() + " " + row.text());
    }

    private void picture(Step.Picture shown) {
        EndPlan end = plan.end(shown.place());
        Optional<BlockPlan> block = end.block(shown.blockId());
        block.ifPresent(each -> html.picture(pictures.step(end, each), shown.says()));
        List<SlipPicture> slips = block.filter(this::showsSlips)
                .map(each -> pictures.slips(end, each, phrases))
                .orElse(List.of());
        if (!slips.isEmpty()) {
            html.within(
                    "div",
                    "slip",
                    () -> slips.forEach(slip -> html.picture(pictures.draw(slip), slip.says(), slip.caption())));
        }
    }

    /** On a page of very many steps right and wrong are shown once for each kind of block. */
    private boolean showsSlips(BlockPlan block) {
        return slipped.add(block.block().key()) || !pictures.many();
    }
}
