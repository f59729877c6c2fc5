package thrumwright.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Pages;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.output.part.CheckLinePart;
import thrumwright.output.part.CutPart;
import thrumwright.output.part.EndPart;
import thrumwright.output.part.FactPart;
import thrumwright.output.part.GaugePart;
import thrumwright.output.part.NotePart;
import thrumwright.output.part.PiecePart;
import thrumwright.output.part.SpacePart;
import thrumwright.output.part.StepPart;
import thrumwright.output.part.TearPart;
import thrumwright.output.part.TogetherPart;
import thrumwright.output.part.YarnPart;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.Chapter;
import thrumwright.sheet.CutLine;
import thrumwright.sheet.PictureWords;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.YarnLine;

/** Lays a step sheet out: the head and the cut list first, then chapter by chapter. */
public final class SheetLayout {
    static final double FOOTER = 18;
    private static final double SPACE = 10;
    /** Sizes to try, the best to read first. */
    private static final List<Double> DENSITIES = List.of(1.0, 0.95, 0.9, 0.85, 1.05);

    /** In a document of more pages nobody misses the few that another size would save. */
    private static final int MANY_PAGES = 40;

    /** Height of the first picture as a share of the page: at most, and at least if all lists are to fit beside it. */
    private static final double LARGEST = 0.26;

    private static final double SMALLEST = 0.1;

    private final Plan plan;
    private final StepSheet sheet;
    private final PiecePicture picture;
    private final PictureWords pictureWords;
    private final Type type;
    private final Palette palette;
    private final Phrases phrases;
    private final Pages pages;
    private final PageSetup setup;

    private SheetLayout(
            StepSheet sheet, PiecePicture picture, PageSetup setup, Type type, Palette palette, Locale locale) {
        this.plan = picture.plan();
        this.sheet = sheet;
        this.picture = picture;
        this.pictureWords = new PictureWords(plan, locale);
        this.type = type;
        this.palette = palette;
        this.phrases = Phrases.of("thrumwright.sheet.steps", locale);
        this.setup = setup;
        this.pages = new Pages(setup, FOOTER);
    }

    /** Lays a sheet out; somewhat denser where that saves enough pages. */
    public static SheetPages of(Plan plan, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
        return of(plan, StepSheet.of(plan, locale), setup, fonts, palette, locale);
    }

    /**
     * Lays out the sheet of one weaver among others.
     *
     * @param name on its head; where it is blank there is a line to write it on
     * @param others how many weavers there are besides
     */
    static SheetPages of(
            Plan plan, String name, int others, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
        StepSheet sheet = StepSheet.of(plan, name, locale);
        if (others <= MANY_PAGES) {
            return of(plan, sheet, setup, fonts, palette, locale);
        }
        Type type = new Type(fonts, setup.distance(), DENSITIES.get(0));
        return new SheetLayout(sheet, PiecePicture.of(plan), setup, type, palette, locale).pages();
    }

    private static SheetPages of(
            Plan plan, StepSheet sheet, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
        PiecePicture picture = PiecePicture.of(plan);
        return leastEmpty(setup, fonts, type -> new SheetLayout(sheet, picture, setup, type, palette, locale).pages());
    }

    /** Of several ways to lay something out, the one that costs least, and of equals the best to read. */
    static SheetPages leastEmpty(PageSetup setup, Fonts fonts, Function<Type, SheetPages> laidOut) {
        SheetPages best = null;
        double least = Double.MAX_VALUE;
        for (double density : DENSITIES) {
            SheetPages pages = laidOut.apply(new Type(fonts, setup.distance(), density));
            double cost = cost(pages, density);
            if (cost < least) {
                best = pages;
                least = cost;
            }
            if (pages.count() > MANY_PAGES) {
                break;
            }
        }
        return best;
    }

    /** Pages, those with hardly anything on them thrice; what is harder to read must save as large a share of them. */
    private static double cost(SheetPages pages, double density) {
        return (pages.count() + 2 * pages.nearlyEmpty()) / Math.min(1, density);
    }

    private SheetPages pages() {
        front();
        for (Chapter chapter : sheet.chapters()) {
            chapter(chapter);
        }
        gauges();
        return new SheetPages(setup, sheet.title(), type, palette, pages.pages());
    }

    /** The first page: as large a picture as leaves room for all lists, where that can be. */
    private void front() {
        List<Part> head = new ArrayList<>();
        head.add(Structured.part(Role.TITLE, new TextPart(sheet.title(), type.title(), palette.ink())));
        sheet.facts().forEach(fact -> head.add(new FactPart(fact, type, palette)));
        List<Part> lists = new ArrayList<>();
        if (!sheet.findings().isEmpty()) {
            lists.add(new SpacePart(SPACE));
            lists.addAll(NotePart.frames(
                    phrases.say("heading.findings"), sheet.findings(), type, palette, pages.width(), pages.height()));
        }
        lists.addAll(cuts());
        lists.addAll(yarns());
        double room = pages.height() - height(head) - height(lists) - SPACE - 1;
        double most = pages.height() * LARGEST;
        boolean fits = room >= pages.height() * SMALLEST;
        head.forEach(pages::add);
        pages.gap(SPACE);
        pages.add(Structured.figure(
                pictureWords.piece(), new PiecePart(picture, palette, fits ? Math.min(room, most) : most)));
        lists.forEach(pages::add);
    }

    private double height(List<Part> parts) {
        return parts.stream().mapToDouble(part -> part.height(pages.width())).sum();
    }

    private List<Part> cuts() {
        List<Part> parts = new ArrayList<>();
        List<CutLine> cuts = sheet.cuts();
        for (int i = 0; i < cuts.size(); i++) {
            Part line = new CutPart(cuts.get(i), phrases, type, palette);
            parts.add(
                    i > 0
                            ? line
                            : new TogetherPart(List.of(
                                    new TearPart(phrases.say("cut.tear"), type, palette),
                                    heading(Role.CHAPTER, phrases.say("heading.cuts")),
                                    new TextPart(sheet.cutNote(), type.small(), palette.faint()),
                                    CutPart.header(phrases, type, palette),
                                    line)));
        }
        return parts;
    }

    private List<Part> yarns() {
        List<Part> parts = new ArrayList<>();
        List<YarnLine> yarns = sheet.yarns();
        for (int i = 0; i < yarns.size(); i++) {
            Part line = new YarnPart(yarns.get(i), type, palette);
            parts.add(
                    i > 0
                            ? line
                            : new TogetherPart(List.of(
                                    new SpacePart(SPACE), heading(Role.CHAPTER, phrases.say("heading.yarns")), line)));
        }
        return parts;
    }

    private Part heading(Role role, String text) {
        Part words = new TextPart(text, type.fonts().bold().deriveFont(17f), palette.ink());
        return Structured.part(role, words);
    }

    private Part chapterTitle(String text) {
        return Structured.part(Role.CHAPTER, new TextPart(text, type.title(), palette.ink()));
    }

    private void chapter(Chapter chapter) {
        if (chapter.kind() == Chapter.Kind.DESIGN) {
            pages.gap(14);
        } else {
            pages.newPage();
        }
        List<Part> opening = new ArrayList<>();
        opening.add(chapterTitle(chapter.title()));
        if (chapter.kind() != Chapter.Kind.DESIGN) {
            opening.add(new TextPart(chapterHead(), type.small(), palette.faint()));
            opening.add(new SpacePart(SPACE / 2));
        }
        chapter.opening().forEach(sentence -> opening.add(new TextPart(sentence, type.body(), palette.ink())));
        chapter.place()
                .ifPresent(place -> opening.add(Structured.figure(
                        pictureWords.end(place, chapter.numbers()),
                        new EndPart(
                                picture,
                                place,
                                chapter.numbers(),
                                type,
                                palette,
                                pages.height() * 0.24 * type.density()))));
        List<Part> first = parts(chapter.steps().get(0));
        if (height(opening) + height(first) <= pages.height()) {
            opening.addAll(first);
            pages.addTogether(opening);
        } else {
            pages.addTogether(opening);
            pages.addTogether(first);
        }
        for (Step step : chapter.steps().subList(1, chapter.steps().size())) {
            pages.addTogether(parts(step));
        }
    }

    /** Strips at true size; each end's may be cut out and held against the weaving. */
    private void gauges() {
        List<EndPlan> ends = Stream.of(plan.start(), plan.top())
                .filter(end -> end.height() > 0)
                .toList();
        if (ends.isEmpty()) {
            return;
        }
        pages.newPage();
        List<Part> head = List.of(
                chapterTitle(phrases.say("gauge.title")),
                new TextPart(phrases.say("gauge.use"), type.body(), palette.ink()),
                new SpacePart(SPACE),
                new CheckLinePart(plan.piece().habits().units(), phrases, type, palette));
        pages.addTogether(head);
        double most = pages.height() - height(head) - 4 * SPACE;
        for (EndPlan end : ends) {
            List<Part> strips = GaugePart.strips(end, plan.piece().shown(), type, palette, most);
            String key = end.place() == Place.START ? "gauge.start" : "gauge.top";
            Part title = new TogetherPart(List.of(new SpacePart(SPACE), heading(Role.STEP, phrases.say(key))));
            pages.addTogether(List.of(title, strips.get(0)));
            strips.subList(1, strips.size()).forEach(pages::add);
        }
    }

    /** What lets a chapter hang by itself: whose it is, on which loom, and room for the date. */
    private String chapterHead() {
        String loom = plan.piece().loom().name();
        String head = phrases.say(
                loom.isBlank() ? "chapter.head.no-loom" : "chapter.head",
                Map.of(
                        "piece", sheet.title(),
                        "loom", loom,
                        "ends", plan.piece().warp().ends(),
                        "sett",
                                plan.piece()
                                        .shown()
                                        .typed(plan.piece().warp().sett().text())));
        return sheet.name()
                .map(name -> phrases.say(
                        name.isBlank() ? "chapter.head.no-name" : "chapter.head.name",
                        Map.of("name", name, "head", head)))
                .orElse(head);
    }

    private List<Part> parts(Step step) {
        return StepPart.all(step, plan, phrases, type, palette, pages.width(), pages.height());
    }
}
