package thrumwright.output;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Pages;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.output.part.FactPart;
import thrumwright.output.part.SpacePart;
import thrumwright.output.part.TableRowPart;
import thrumwright.output.part.TickedPart;
import thrumwright.output.part.TogetherPart;
import thrumwright.output.part.YarnHeadingPart;
import thrumwright.output.part.YarnPart;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.YarnLine;
import thrumwright.yarn.Yarn;

/** Lays the lists of a class out: what to buy, what to cut together, and the looms. */
public final class ClassLayout {
    private static final double SPACE = 14;
    /** The widest column but for the last, as a share of the page. */
    private static final double WIDEST = 0.28;

    private final ClassSheet sheet;
    private final PageSetup setup;
    private final Type type;
    private final Palette palette;
    private final Phrases phrases;
    private final Pages pages;

    private ClassLayout(ClassSheet sheet, PageSetup setup, Type type, Palette palette, Locale locale) {
        this.sheet = sheet;
        this.setup = setup;
        this.type = type;
        this.palette = palette;
        this.phrases = Phrases.of("thrumwright.sheet.class", locale);
        this.pages = new Pages(setup, Densities.FOOTER);
    }

    /** Lays the lists out; somewhat denser where that saves pages with hardly anything on them. */
    public static SheetPages of(ClassSheet sheet, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
        return Densities.best(setup, fonts, type -> new ClassLayout(sheet, setup, type, palette, locale).pages());
    }

    private SheetPages pages() {
        pages.add(Structured.part(Role.TITLE, text(sheet.title(), type.title())));
        sheet.facts().forEach(fact -> pages.add(new FactPart(fact, type, palette)));
        findings();
        shopping();
        cuts();
        looms();
        return new SheetPages(setup, sheet.title(), type, palette, pages.pages());
    }

    private Part text(String text, Font font) {
        return new TextPart(text, font, palette.ink());
    }

    private Part heading(String key) {
        return Structured.part(
                Role.CHAPTER, text(phrases.say(key), type.fonts().bold().deriveFont(17f)));
    }

    private void findings() {
        List<String> findings = sheet.findings();
        for (int i = 0; i < findings.size(); i++) {
            Part line = Structured.item(text("• " + findings.get(i), type.body()));
            addUnder("heading.findings", i, line);
        }
    }

    private void shopping() {
        List<YarnLine> lines = sheet.shopping();
        for (int i = 0; i < lines.size(); i++) {
            Part line = new TickedPart(new YarnPart(lines.get(i), "", type, palette), palette);
            addUnder("heading.shopping", i, i == 0 ? new TogetherPart(List.of(shoppingNote(), line)) : line);
        }
    }

    private Part shoppingNote() {
        return new TextPart(sheet.shoppingNote(), type.small(), palette.faint());
    }

    /** The first of several parts together with their heading. */
    private void addUnder(String heading, int index, Part part) {
        pages.addTogether(index == 0 ? List.of(new SpacePart(SPACE), heading(heading), part) : List.of(part));
    }

    private void cuts() {
        if (sheet.cuts().isEmpty()) {
            return;
        }
        List<String> names = Stream.of("cuts.count", "cuts.length", "cuts.whom")
                .map(phrases::say)
                .toList();
        TableRowPart.Columns columns = cutColumns(names);
        List<Part> opening = new ArrayList<>(List.of(
                new SpacePart(SPACE),
                heading("heading.cuts"),
                new TextPart(sheet.cutNote(), type.small(), palette.faint())));
        for (ClassSheet.Cuts cuts : sheet.cuts()) {
            opening.add(new SpacePart(SPACE / 2));
            opening.add(new YarnHeadingPart(cuts.heading(), cuts.yarn().map(Yarn::colour), type, palette));
            List<List<String>> rows = cuts.lines().stream()
                    .map(line -> List.of(line.count() + " ×", line.length(), line.whom()))
                    .toList();
            table(opening, names, rows, columns, TableRowPart.RowKind.TICKED);
            opening = new ArrayList<>();
        }
    }

    private TableRowPart.Columns cutColumns(List<String> names) {
        List<List<String>> rows = sheet.cuts().stream()
                .flatMap(cuts -> cuts.lines().stream())
                .map(line -> List.of(line.count() + " ×", line.length()))
                .toList();
        double room = pages.width() - TableRowPart.Columns.FOR_BOX;
        double counts = natural(names, rows, 0, true);
        double lengths = natural(names, rows, 1, true);
        return new TableRowPart.Columns(
                TableRowPart.Columns.FOR_BOX, List.of(counts, lengths, room - counts - lengths), 2);
    }

    /** A table whose head is told again on every page; its first row isn't parted from what opens it. */
    private void table(
            List<Part> opening,
            List<String> names,
            List<List<String>> rows,
            TableRowPart.Columns columns,
            TableRowPart.RowKind kind) {
        Part head = new TableRowPart(names, columns, TableRowPart.RowKind.HEAD, type, palette);
        List<Part> together = new ArrayList<>(opening);
        together.add(head);
        for (List<String> cells : rows) {
            Part row = new TableRowPart(cells, columns, kind, type, palette);
            together.add(row);
            if (together.size() == 1 && row.height(pages.width()) > pages.left()) {
                pages.newPage();
                pages.add(Structured.part(Role.ORNAMENT, head));
            }
            pages.addTogether(together);
            together = new ArrayList<>();
        }
    }

    /** As many columns side by side as fit; the others in further tables that begin with number and name again. */
    private void looms() {
        int done = 2;
        do {
            List<Integer> shown = new ArrayList<>(List.of(0, 1));
            double width = loomColumn(0) + loomColumn(1);
            while (done < sheet.columns().size() && (shown.size() == 2 || width + loomColumn(done) <= pages.width())) {
                width += loomColumn(done);
                shown.add(done++);
            }
            String key = shown.contains(2) || done == 2 ? "heading.looms" : "heading.looms.more";
            table(
                    List.of(new SpacePart(SPACE), heading(key)),
                    picked(sheet.columns(), shown),
                    sheet.looms().stream().map(row -> picked(row, shown)).toList(),
                    new TableRowPart.Columns(
                            0, shown.stream().map(this::loomColumn).toList(), 2),
                    TableRowPart.RowKind.PLAIN);
        } while (done < sheet.columns().size());
    }

    private static List<String> picked(List<String> cells, List<Integer> columns) {
        return columns.stream().map(cells::get).toList();
    }

    private double loomColumn(int column) {
        return natural(sheet.columns(), sheet.looms(), column, column < 2);
    }

    /** As wide as a column's widest text, but not so wide that few others fit beside it. */
    private double natural(List<String> names, List<List<String>> rows, int column, boolean strong) {
        Font font = TableRowPart.font(TableRowPart.RowKind.PLAIN, strong, type);
        double widest = Stream.of(names.get(column).split(" "))
                .mapToDouble(word -> TextPart.width(word, type.small()))
                .max()
                .orElse(0);
        for (List<String> row : rows) {
            widest = Math.max(widest, TextPart.width(row.get(column), font));
        }
        return Math.min(Math.ceil(widest) + TableRowPart.Columns.BETWEEN, WIDEST * pages.width());
    }
}
