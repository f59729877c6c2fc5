package thrumwright.output.html;

import java.util.Locale;
import thrumwright.plan.Plan;
import thrumwright.sheet.WarpingSheet;

/** How the warp is put on, for a browser. */
record HtmlWarping(Html html, HtmlPictures pictures) {
    void write(Plan plan, Locale locale) {
        WarpingSheet sheet = WarpingSheet.of(plan, locale);
        html.within("section", "chapter", () -> {
            html.line("h2", sheet.title());
            HtmlFile.facts(html, sheet.facts());
            html.picture(pictures.way(locale), sheet.way());
            html.picture(pictures.marked(locale), sheet.counted());
            sheet.steps().forEach(step -> html.within("section", "step", () -> step(step)));
            sheet.cautions().forEach(caution -> html.line("p", "careful", caution));
        });
    }

    private void step(WarpingSheet.WarpStep step) {
        html.ticked("h3", step.number() + " " + step.title());
        html.line("p", step.text());
    }
}
