package thrumwright.output;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.PiecePicture;
import thrumwright.measure.Phrases;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.sheet.Chapter;
import thrumwright.sheet.CutLine;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.YarnLine;

/** Lays a step sheet out: the head and the cut list first, then chapter by chapter. */
public final class SheetLayout {
    private static final double MARGIN = 14 * Paper.POINTS;
    private static final double FOOTER = 18;
    /** How far from the eye a sheet hangs by the loom unless said otherwise, m. */
    public static final double USUAL_DISTANCE = 1;

    private final Plan plan;
    private final StepSheet sheet;
    private final PiecePicture picture;
    private final Type type;
    private final Palette palette;
    private final Phrases phrases;
    private final Pages pages;
    private final Paper paper;

    private SheetLayout(Plan plan, Paper paper, Fonts fonts, Palette palette, double distance, Locale locale) {
        this.plan = plan;
        this.sheet = StepSheet.of(plan, locale);
        this.picture = PiecePicture.of(plan);
        this.type = new Type(fonts, distance);
        this.palette = palette;
        this.phrases = Phrases.of("thrumwright.sheet.steps", locale);
        this.paper = paper;
        this.pages = new Pages(paper, MARGIN, FOOTER);
    }

    /**
     * Lays a sheet out.
     *
     * @param distance from the eye to the hanging sheet, m, 0.4 to 2
     */
    public static SheetPages of(Plan plan, Paper paper, Fonts fonts, Palette palette, double distance, Locale locale) {
        return new SheetLayout(plan, paper, fonts, palette, distance, locale).pages();
    }

    private SheetPages pages() {
        head();
        cuts();
        for (Chapter chapter : sheet.chapters()) {
            chapter(chapter);
        }
        return new SheetPages(paper, sheet.title(), type, palette, MARGIN, pages.pages());
    }

    private void head() {
        pages.add(new TextPart(sheet.title(), type.title(), palette.ink()));
        pages.gap(4);
        sheet.facts().forEach(fact -> pages.add(new FactPart(fact, type, palette)));
        pages.gap(10);
        pages.add(new PiecePart(picture, palette, pages.height() * 0.26));
        pages.gap(10);
        if (!sheet.findings().isEmpty()) {
            pages.add(new NotePart(phrases.say("heading.findings"), sheet.findings(), type, palette));
            pages.gap(10);
        }
    }

    private void cuts() {
        if (!sheet.cuts().isEmpty()) {
            List<Part> opening = new ArrayList<>();
            opening.add(heading(phrases.say("heading.cuts")));
            opening.add(CutPart.header(phrases, type, palette));
            List<CutLine> cuts = sheet.cuts();
            opening.add(new CutPart(cuts.get(0), phrases, type, palette));
            pages.addTogether(opening);
            cuts.subList(1, cuts.size()).forEach(cut -> pages.add(new CutPart(cut, phrases, type, palette)));
            pages.gap(12);
        }
        List<Part> yarns = new ArrayList<>();
        yarns.add(heading(phrases.say("heading.yarns")));
        for (YarnLine line : sheet.yarns()) {
            yarns.add(new YarnPart(line, type, palette));
        }
        pages.addTogether(yarns);
    }

    private Part heading(String text) {
        return new TextPart(text, type.fonts().bold().deriveFont(17f), palette.ink());
    }

    private void chapter(Chapter chapter) {
        if (chapter.kind() == Chapter.Kind.DESIGN) {
            pages.gap(14);
        } else {
            pages.newPage();
        }
        List<Part> opening = new ArrayList<>();
        opening.add(new TextPart(chapter.title(), type.title(), palette.ink()));
        chapter.opening().forEach(sentence -> opening.add(new TextPart(sentence, type.body(), palette.ink())));
        place(chapter)
                .ifPresent(place -> opening.add(
                        new EndPart(picture, place, numbers(chapter), type, palette, pages.height() * 0.24)));
        opening.addAll(parts(chapter.steps().get(0)));
        pages.addTogether(opening);
        for (Step step : chapter.steps().subList(1, chapter.steps().size())) {
            pages.addTogether(parts(step));
        }
    }

    private List<Part> parts(Step step) {
        return StepPart.all(step, plan, phrases, type, palette);
    }

    private static Optional<Place> place(Chapter chapter) {
        return switch (chapter.kind()) {
            case START -> Optional.of(Place.START);
            case TOP -> Optional.of(Place.TOP);
            case DESIGN, OFF_LOOM -> Optional.empty();
        };
    }

    private static Map<String, Integer> numbers(Chapter chapter) {
        Map<String, Integer> numbers = new HashMap<>();
        for (Step step : chapter.steps()) {
            step.picture().ifPresent(shown -> numbers.put(shown.blockId(), step.number()));
        }
        return numbers;
    }
}
