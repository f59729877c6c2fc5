package thrumwright.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.measure.Phrases;
import thrumwright.output.page.EvenPages;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Pages;
import thrumwright.output.page.Part;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Structured;
import thrumwright.output.page.Type;
import thrumwright.output.part.CheckLinePart;
import thrumwright.output.part.CutPart;
import thrumwright.output.part.FactPart;
import thrumwright.output.part.GaugeStrips;
import thrumwright.output.part.NotePart;
import thrumwright.output.part.PartMaker;
import thrumwright.output.part.PiecePart;
import thrumwright.output.part.SpacePart;
import thrumwright.output.part.TogetherPart;
import thrumwright.output.part.YarnPart;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Words;
import thrumwright.sheet.Booklet;
import thrumwright.sheet.CutGroup;
import thrumwright.sheet.PictureWords;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.card.YarnLetters;
import thrumwright.yarn.Yarn;

/**
 * Lays out what is needed before the weaving begins: facts, findings, what to cut and to buy, and the gauge strips. On one page
 * where that can be.
 *
 * @param own what a class's booklet leaves to this loom
 */
record CutPages(StepSheet sheet, List<Booklet.Own> own, Plan plan, PageSetup setup, Palette palette, Locale locale) {
    private static final double SPACE = 6;
    /** Height of the picture as a share of the page. */
    private static final double LARGEST = 0.26;

    private static final double SMALLEST = 0.09;

    SheetPages laidOut(Fonts fonts) {
        PiecePicture picture = PiecePicture.of(plan);
        return Densities.best(setup, fonts, type -> pages(type, picture));
    }

    private SheetPages pages(Type type, PiecePicture picture) {
        PartMaker make = new PartMaker(type, palette, Phrases.of("thrumwright.sheet.steps", locale));
        Pages pages = new Pages(setup, Densities.FOOTER);
        List<Part> lists = lists(make, pages);
        GaugeStrips strips = new GaugeStrips(plan, new Words(locale), make);
        double above = PartMaker.height(gaugeHead(make), pages.width()) + SPACE;
        List<Part> gauges = gauges(strips.rows(pages.width(), pages.height() - above, pages.height() - above), make);
        head(make).forEach(pages::add);
        double room = room(pages, lists, gauges);
        if (room >= SMALLEST * pages.height()) {
            pages.add(picture(picture, Math.min(room, LARGEST * pages.height())));
        }
        lists.forEach(pages::add);
        return new SheetPages(setup, sheet.title(), type, palette, withGauges(pages, strips, gauges, above, make));
    }

    /** What the lists leave to a picture above them, and the strips too where they fit on the same page. */
    private static double room(Pages pages, List<Part> lists, List<Part> gauges) {
        double room = pages.left() - PartMaker.height(lists, pages.width()) - SPACE - 1;
        double below = PartMaker.height(gauges, pages.width());
        return room >= below ? room - below : room;
    }

    /** Strips are cut shorter only where a page would stay half empty without them. */
    private List<List<thrumwright.output.page.PlacedPart>> withGauges(
            Pages pages, GaugeStrips strips, List<Part> gauges, double above, PartMaker make) {
        boolean fits = PartMaker.height(gauges, pages.width()) <= pages.left();
        boolean full = pages.left() < pages.height() / 2;
        EvenPages even = new EvenPages(pages);
        if (fits || full) {
            gauges.forEach(row -> even.add(List.of(row)));
        } else {
            gauges(strips.rows(pages.width(), pages.left() - above, pages.height() - above), make)
                    .forEach(row -> even.add(List.of(row)));
        }
        return even.placed();
    }

    private List<Part> head(PartMaker make) {
        List<Part> head = new ArrayList<>();
        head.add(make.title(sheet.title()));
        sheet.facts().forEach(fact -> head.add(new FactPart(fact, make.type(), palette)));
        return head;
    }

    private Part picture(PiecePicture picture, double most) {
        return new TogetherPart(List.of(
                new SpacePart(SPACE),
                Structured.figure(new PictureWords(plan, locale).piece(), new PiecePart(picture, palette, most))));
    }

    private List<Part> lists(PartMaker make, Pages pages) {
        List<Part> lists = new ArrayList<>();
        if (!sheet.findings().isEmpty()) {
            lists.add(new SpacePart(SPACE));
            lists.addAll(findings(make, pages));
        }
        under(lists, List.of(make.chapter("heading.cuts"), make.small(sheet.cutNote())), cuts(make));
        under(lists, List.of(make.chapter("heading.yarns"), make.body(sheet.yarnNote())), yarns(make));
        under(lists, List.of(make.chapter("own.title")), own(make));
        return lists;
    }

    /** In one frame, if it fits below the head. */
    private List<Part> findings(PartMaker make, Pages pages) {
        String heading = make.phrases().say("heading.findings");
        double below = pages.height() - PartMaker.height(head(make), pages.width()) - SPACE;
        Part whole = new NotePart(heading, sheet.findings(), make.type(), palette);
        return whole.height(pages.width()) <= below
                ? List.of(whole)
                : NotePart.frames(heading, sheet.findings(), make.type(), palette, pages.width(), pages.height() / 4);
    }

    /** The first line isn't parted from what stands above it. */
    private static void under(List<Part> all, List<Part> above, List<Part> lines) {
        if (!lines.isEmpty()) {
            List<Part> first = new ArrayList<>(List.of(new SpacePart(SPACE)));
            first.addAll(above);
            first.add(lines.get(0));
            all.add(new TogetherPart(first));
            all.addAll(lines.subList(1, lines.size()));
        }
    }

    private List<Part> cuts(PartMaker make) {
        List<Part> lines = new ArrayList<>();
        for (CutGroup group : CutGroup.of(sheet.cuts())) {
            Part line = new CutPart(group, letter(group.first().yarn()), make.phrases(), make.type(), palette);
            lines.add(
                    lines.isEmpty()
                            ? new TogetherPart(List.of(CutPart.header(make.phrases(), make.type(), palette), line))
                            : line);
        }
        return lines;
    }

    /** By which the cards name a yarn. */
    private String letter(Optional<Yarn> yarn) {
        return yarn.map(YarnLetters.of(plan.piece())::letter).orElse("");
    }

    private List<Part> yarns(PartMaker make) {
        return sheet.yarns().stream()
                .<Part>map(line -> new YarnPart(line, letter(line.yarn()), make.type(), palette))
                .toList();
    }

    private List<Part> own(PartMaker make) {
        return own.stream()
                .map(line -> make.body(make.phrases()
                        .say("own.line", Map.of("step", line.step(), "title", line.title(), "text", line.text()))))
                .toList();
    }

    /** With what to do with them, and the line to hold a ruler to; nothing where there are no strips. */
    private List<Part> gauges(List<Part> rows, PartMaker make) {
        List<Part> gauges = new ArrayList<>();
        under(gauges, gaugeHead(make), rows);
        return gauges;
    }

    private List<Part> gaugeHead(PartMaker make) {
        return List.of(
                make.chapter("gauge.title"),
                make.small(make.phrases().say("gauge.use")),
                new CheckLinePart(plan.piece().habits().units(), make.phrases(), make.type(), palette));
    }
}
