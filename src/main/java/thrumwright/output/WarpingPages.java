package thrumwright.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.EvenPages;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Pages;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.output.part.DesignStrips;
import thrumwright.output.part.FactPart;
import thrumwright.output.part.MarkedBarPart;
import thrumwright.output.part.PartMaker;
import thrumwright.output.part.SpacePart;
import thrumwright.output.part.TogetherPart;
import thrumwright.output.part.WarpWayPart;
import thrumwright.plan.Plan;
import thrumwright.sheet.WarpingSheet;

/** Lays out how the warp is put on: what to count, the way round, the steps; and the strip for a cloth that travels. */
record WarpingPages(WarpingSheet sheet, Plan plan, PageSetup setup, Palette palette, Locale locale) {
    private static final double SPACE = 8;

    SheetPages laidOut(Fonts fonts) {
        return Densities.best(setup, fonts, this::pages);
    }

    private SheetPages pages(Type type) {
        PartMaker make = new PartMaker(type, palette, Phrases.of("thrumwright.sheet.warping", locale));
        Pages pages = new Pages(setup, Densities.FOOTER);
        pages.add(make.section(sheet.title()));
        sheet.facts().forEach(fact -> pages.add(new FactPart(fact, type, palette)));
        pages.add(new SpacePart(SPACE));
        pages.add(Structured.figure(sheet.way(), new WarpWayPart(plan.piece(), make)));
        pages.add(Structured.figure(sheet.counted(), new MarkedBarPart(plan.piece(), make)));
        EvenPages even = new EvenPages(pages);
        sheet.steps().forEach(step -> even.add(step(step, make)));
        sheet.cautions().forEach(caution -> even.add(List.of(caution(caution, type))));
        if (plan.room().travels()) {
            strips(even, pages, make);
        }
        return new SheetPages(setup, sheet.title(), type, palette, even.placed());
    }

    private static List<Part> step(WarpingSheet.WarpStep step, PartMaker make) {
        Part title = new TextPart(
                step.number() + "  " + step.title(),
                make.type().fonts().bold().deriveFont(make.type().body().getSize2D()),
                make.palette().ink());
        return List.of(new TogetherPart(
                List.of(new SpacePart(SPACE / 2), Structured.part(Role.STEP, title), make.body(step.text()))));
    }

    private Part caution(String text, Type type) {
        return new TextPart(text, type.aside(), palette.accent());
    }

    private void strips(EvenPages even, Pages pages, PartMaker make) {
        List<Part> above = new ArrayList<>(List.of(
                new SpacePart(SPACE),
                make.chapter("strip.title"),
                make.small(make.phrases().say("strip.about"))));
        double room = pages.height() - PartMaker.height(above, pages.width());
        List<Part> rows = new DesignStrips(plan, make).rows(pages.width(), room);
        above.add(rows.get(0));
        even.add(List.of(new TogetherPart(above)));
        rows.subList(1, rows.size()).forEach(row -> even.add(List.of(row)));
    }
}
