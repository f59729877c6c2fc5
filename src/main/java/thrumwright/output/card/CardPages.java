package thrumwright.output.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.PlacedPart;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Type;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.card.Card;

/**
 * The cards of a piece: the start's, then the top's, each end on as few cards as the distance allows; of a loom in a class both on one
 * page, if there is room.
 */
public final class CardPages {
    private static final double FOOTER = 16;
    /** Between two cards on one page, points. */
    private static final double BETWEEN = 18;

    private final Plan plan;
    private final PageSetup setup;
    private final Type type;
    private final Palette palette;
    private final Phrases phrases;
    private final TextWidths widths = new TextWidths();

    private CardPages(Plan plan, PageSetup setup, Type type, Palette palette, Phrases phrases) {
        this.plan = plan;
        this.setup = setup;
        this.type = type;
        this.palette = palette;
        this.phrases = phrases;
    }

    /** @param sheet of the same plan */
    public static SheetPages of(
            Plan plan, StepSheet sheet, PageSetup setup, Fonts fonts, Palette palette, Locale locale) {
        Type type = new Type(fonts, setup.distance(), 1);
        CardPages cards = new CardPages(plan, setup, type, palette, Phrases.of("thrumwright.sheet.card", locale));
        List<Card> ends = Stream.of(Place.values())
                .filter(place -> place == Place.START || Card.needed(plan, place))
                .map(place -> Card.of(plan, sheet.name(), sheet, place, locale))
                .toList();
        List<CardForms> forms = ends.stream().map(cards::forms).toList();
        Optional<List<PlacedPart>> one =
                sheet.name().isPresent() && ends.size() == 2 ? cards.onOnePage(forms) : Optional.empty();
        List<List<PlacedPart>> pages = one.map(List::of)
                .orElseGet(() ->
                        forms.stream().flatMap(end -> cards.pages(end).stream()).toList());
        return new SheetPages(setup, plan.piece().title(), type, palette, pages);
    }

    /** For a class, which needs many: the start above, which is read first, and the top below it, if both find room with drawings. */
    private Optional<List<PlacedPart>> onOnePage(List<CardForms> ends) {
        double half = (height() - BETWEEN) / 2;
        List<PlacedPart> placed = new ArrayList<>();
        for (CardForms end : ends) {
            CardForms.Chosen chosen = end.best(half);
            if (chosen.faults() > 0) {
                return Optional.empty();
            }
            double margin = setup.marginPoints();
            double y = placed.isEmpty() ? margin : margin + half + BETWEEN;
            placed.add(
                    new PlacedPart(new CardPart(chosen.content(), 0, chosen.runs(), half), margin, y, width(), half));
        }
        return Optional.of(placed);
    }

    private CardForms forms(Card card) {
        return new CardForms(
                CardForm.all(type.large()),
                form -> CardContent.of(plan, card, phrases, new CardStyle(type, palette, form, widths), width()));
    }

    private double height() {
        return setup.height() - 2 * setup.marginPoints() - FOOTER;
    }

    private double width() {
        return setup.width() - 2 * setup.marginPoints();
    }

    private List<List<PlacedPart>> pages(CardForms end) {
        CardForms.Chosen chosen = end.best(height());
        List<CardBreaks.Run> runs = chosen.runs();
        double margin = setup.marginPoints();
        return IntStream.range(0, runs.size())
                .mapToObj(i -> new CardPart(chosen.content(), i, runs, height()))
                .map(part -> List.of(new PlacedPart(part, margin, margin, width(), height())))
                .toList();
    }
}
