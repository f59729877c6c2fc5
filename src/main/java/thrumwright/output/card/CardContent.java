package thrumwright.output.card;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thrumwright.measure.Phrases;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.card.Card;
import thrumwright.sheet.card.CardRow;
import thrumwright.sheet.card.CardSaying;

/**
 * A whole end set in one form, before it is divided into cards.
 *
 * @param heights the least of each row, points
 */
record CardContent(
        Plan plan,
        Card card,
        Phrases phrases,
        CardStyle style,
        double width,
        CardColumns columns,
        List<RowFace> faces,
        List<Double> heights,
        Around around) {
    private static final double PADDING = 3;
    private static final double TIGHT_PADDING = 1.5;
    /** Height of a drawing over its width, at least, where there is room. */
    private static final double SHAPE = 0.56;
    /** Words need so much of a line, times the type size. */
    private static final double LEAST_WORDS = 5.2;

    static CardContent of(Plan plan, Card card, Phrases phrases, CardStyle style, double width) {
        CardColumns columns = CardColumns.of(card.rows(), width, style);
        List<RowFace> faces = card.rows().stream()
                .map(row -> new RowSetter(row, columns.words(), style, phrases).set())
                .toList();
        List<Double> heights = IntStream.range(0, faces.size())
                .mapToObj(row -> height(card.rows().get(row), faces.get(row), columns, style))
                .toList();
        return new CardContent(
                plan, card, phrases, style, width, columns, faces, heights, Around.of(card, width, style));
    }

    /**
     * Heights of what stands above and below the rows, points.
     *
     * @param one of the head of a card that is alone
     * @param several of the head of one of several cards
     */
    record Around(KeyFlow keys, double one, double several, double begin, double after) {
        static Around of(Card card, double width, CardStyle style) {
            KeyFlow keys = KeyFlow.of(style.form().bare() ? List.of() : card.keys(), width, style);
            CardSaying number = new CardSaying("", "");
            return new Around(
                    keys,
                    new CardHead(card, Optional.empty(), keys, width, style).height(),
                    new CardHead(card, Optional.of(number), keys, width, style).height(),
                    new CardLinesPart(List.of(card.begin()), style).height(width),
                    new CardLinesPart(card.after(), style).height(width));
        }
    }

    EndPlan end() {
        return plan.end(card.place());
    }

    CardHead head(Optional<CardSaying> number) {
        return new CardHead(card, number, around.keys(), width, style);
    }

    double beginHeight() {
        return around.begin();
    }

    double afterHeight() {
        return around.after();
    }

    /** Whether large words find a line that is long enough. */
    boolean wideEnough() {
        return columns.words() >= LEAST_WORDS * style.large();
    }

    /** Whether no row needs more large lines than its form is meant to have. */
    boolean neat() {
        return faces.stream().allMatch(face -> face.large().lines().size() <= 2);
    }

    private static double height(CardRow row, RowFace face, CardColumns columns, CardStyle style) {
        double picture = style.form().roomy() && drawn(row) ? columns.picture() * SHAPE : 0;
        double tag = new NumberTag(style).height();
        return Math.max(Math.max(picture, tag), face.height()) + 2 * padding(style);
    }

    double height(int row) {
        return heights.get(row);
    }

    private static double padding(CardStyle style) {
        return style.form().lines() == CardForm.Lines.ONE ? TIGHT_PADDING : PADDING;
    }

    /** Free above and below a row, points. */
    double padding() {
        return padding(style);
    }

    static boolean drawn(CardRow row) {
        return !row.pictureSays().isEmpty();
    }

    double height(int from, int to) {
        double sum = 0;
        for (int row = from; row < to; row++) {
            sum += height(row);
        }
        return sum;
    }

    CardLinesPart begin() {
        return new CardLinesPart(List.of(card.begin()), style);
    }

    CardLinesPart after() {
        return new CardLinesPart(card.after(), style);
    }
}
