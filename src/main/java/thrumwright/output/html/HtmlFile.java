package thrumwright.output.html;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Markup;
import thrumwright.output.page.SheetPages;
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
import thrumwright.sheet.Sewn;
import thrumwright.sheet.SheetMark;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.yarn.Yarn;

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
    private final Palette palette;
    private final Html html;
    private final Locale locale;

    private HtmlFile(Html html, Plan plan, StepSheet sheet, Fonts fonts, Palette palette, Locale locale) {
        this.locale = locale;
        this.html = html;
        this.plan = plan;
        this.palette = palette;
        this.sheet = sheet;
        this.phrases = Phrases.of("thrumwright.sheet.steps", locale);
        this.pictureWords = new PictureWords(plan, locale);
        this.pictures = new HtmlPictures(plan, fonts, palette, html);
    }

    /**
     * The whole page.
     *
     * @param warping whether it says how the warp is put on
     * @param cards that are drawn on it, and printed on pages of their own; empty for none
     */
    public static String of(
            Plan plan, boolean warping, Optional<SheetPages> cards, Fonts fonts, Palette palette, Locale locale) {
        Html html = new Html();
        StepSheet sheet = StepSheet.of(plan, locale);
        String style = cards.map(HtmlCards::style).orElse("");
        HtmlFrame.begin(html, sheet.title(), SheetMark.of(plan, sheet, locale), style);
        new HtmlFile(html, plan, sheet, fonts, palette, locale).write(warping, cards);
        HtmlFrame.end(html);
        return html.toString();
    }

    /** A sheet and its cards, if there are any, within the body of a page. */
    static void write(ClassHtml.OfLoom loom, Html html, Fonts fonts, Palette palette, Locale locale) {
        new HtmlFile(html, loom.plan(), loom.sheet(), fonts, palette, locale).write(loom.warping(), loom.cards());
    }

    private void write(boolean warping, Optional<SheetPages> cards) {
        html.line("h1", sheet.title());
        facts();
        html.picture(pictures.piece(), pictureWords.piece());
        findings();
        if (warping) {
            new HtmlWarping(html, pictures).write(plan, locale);
        }
        cuts();
        yarns();
        int before = html.length();
        sheet.chapters().forEach(chapter -> chapter(chapter, cards.isEmpty()));
        // they use the drawings of the steps
        int since = html.length();
        cards.ifPresent(pages -> new HtmlCards(html, pages).write());
        html.bringForward(since, before);
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
        html.within("table", "cuts", () -> {
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
            html.line("td", cut.times());
            html.coloured("td", colour(cut.yarn()), cut.whatAndRole());
            html.line("td", CutPart.use(cut, phrases));
        });
    }

    private void yarns() {
        html.line("h2", phrases.say("heading.yarns"));
        html.line("p", sheet.yarnNote());
        html.within(
                "ul", "", () -> sheet.yarns().forEach(line -> html.coloured("li", colour(line.yarn()), line.text())));
    }

    private Optional<Color> colour(Optional<Yarn> yarn) {
        return yarn.map(Yarn::colour).map(palette::yarn);
    }

    private void chapter(Chapter chapter, boolean drawn) {
        html.within("section", "chapter", () -> {
            html.line("h2", chapter.title());
            chapter.opening().forEach(sentence -> html.line("p", sentence));
            chapter.place().filter(place -> drawn).ifPresent(place -> {
                Map<String, Integer> numbers = chapter.numbers();
                html.picture(pictures.end(place, numbers), pictureWords.end(place, numbers));
            });
            chapter.steps().forEach(step -> html.within("section", "step", () -> step(step)));
        });
    }

    private void step(Step step) {
        html.ticked("h3", step.number() + " " + step.title());
        step.picture().ifPresent(this::picture);
        Sewn.of(step.kind()).ifPresent(sewn -> html.picture(pictures.sewn(sewn, sewn.says(locale)), sewn.says(locale)));
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
        block.ifPresent(each -> slips(end, each));
    }

    private void slips(EndPlan end, BlockPlan block) {
        List<SlipPicture> slips = pictures.slips(end, block, phrases);
        if (slips.isEmpty()) {
            return;
        }
        html.within("div", "slip", () -> {
            for (int i = 0; i < slips.size(); i++) {
                SlipPicture slip = slips.get(i);
                html.picture(pictures.slip(end, block, i, slip), slip.says(), slip.caption());
            }
        });
    }
}
