package thrumwright.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Pages;
import thrumwright.output.page.Part;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Type;
import thrumwright.output.part.FactPart;
import thrumwright.output.part.PartMaker;
import thrumwright.output.part.SpacePart;
import thrumwright.output.part.TableRowPart;
import thrumwright.sheet.RecordSheet;

/** Lays a record sheet out. */
record RecordPages(RecordSheet record, PageSetup setup, Palette palette, Locale locale) {
    private static final double SPACE = 10;
    private static final List<Double> MEASURES = List.of(0.07, 0.33, 0.14, 0.16, 0.14, 0.16);
    private static final List<Double> YARNS = List.of(0.4, 0.3, 0.3);

    SheetPages laidOut(Fonts fonts) {
        return Densities.best(setup, fonts, this::pages);
    }

    private SheetPages pages(Type type) {
        PartMaker make = new PartMaker(type, palette, Phrases.of("thrumwright.sheet.steps", locale));
        Pages pages = new Pages(setup, Densities.FOOTER);
        pages.add(make.section(record.title()));
        record.facts().forEach(fact -> pages.add(new FactPart(fact, type, palette)));
        table(pages, "record.measures", record.columns(), record.measures(), MEASURES, make);
        table(pages, "record.yarns", record.yarnColumns(), record.yarns(), YARNS, make);
        return new SheetPages(setup, record.title(), type, palette, pages.pages());
    }

    private void table(
            Pages pages,
            String heading,
            List<String> names,
            List<List<String>> rows,
            List<Double> shares,
            PartMaker make) {
        TableRowPart.Columns columns = new TableRowPart.Columns(
                0, shares.stream().map(share -> share * pages.width()).toList(), 2);
        List<Part> together = new ArrayList<>(List.of(
                new SpacePart(SPACE), make.chapter(heading), row(names, columns, TableRowPart.RowKind.HEAD, make)));
        for (List<String> cells : rows) {
            together.add(row(cells, columns, TableRowPart.RowKind.PLAIN, make));
            pages.addTogether(together);
            together = new ArrayList<>();
        }
    }

    private Part row(List<String> cells, TableRowPart.Columns columns, TableRowPart.RowKind kind, PartMaker make) {
        return new TableRowPart(cells, columns, kind, make.type(), palette);
    }
}
