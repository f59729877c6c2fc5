package thrumwright.output.card;

import java.util.List;
import java.util.stream.IntStream;
import thrumwright.measure.Phrases;
import thrumwright.plan.Plan;
import thrumwright.sheet.card.Card;
import thrumwright.sheet.card.CardRow;

/** A whole end set in one form, before it is divided into cards. */
record CardContent(
        Plan plan,
        Card card,
        Phrases phrases,
        CardStyle style,
        double width,
        CardColumns columns,
        List<RowFace> faces) {
    private static final double PADDING = 3;
    private static final double TIGHT_PADDING = 1.5;
    /** Height of a drawing over its width, at least, where there is room. */
    private static final double SHAPE = 0.56;
    /** Words need so much of a line, times the type size. */
    private static final double LEAST_WORDS = 5.2;

    static CardContent of(Plan plan, Card card, Phrases phrases, CardStyle style, double width) {
        CardColumns columns = CardColumns.of(card.rows(), width, style);
        List<RowFace> faces = card.rows().stream()
                .map(row -> RowFace.of(row, columns.words(), style, phrases))
                .toList();
        return new CardContent(plan, card, phrases, style, width, columns, faces);
    }

    /** Whether large words find a line that is long enough. */
    boolean wideEnough() {
        return columns.words() >= LEAST_WORDS * style.large();
    }

    /** Whether no row needs more large lines than its form is meant to have. */
    boolean neat() {
        return faces.stream().allMatch(face -> face.large().lines().size() <= 2);
    }

    /** The least height of a row, points. */
    double height(int row) {
        double picture = style.form().roomy() && drawn(card.rows().get(row)) ? columns.picture() * SHAPE : 0;
        double tag = new NumberTag(style).height();
        return Math.max(Math.max(picture, tag), faces.get(row).height()) + 2 * padding();
    }

    /** Free above and below a row, points. */
    double padding() {
        return style.form().lines() == CardForm.Lines.ONE ? TIGHT_PADDING : PADDING;
    }

    static boolean drawn(CardRow row) {
        return !row.pictureSays().isEmpty();
    }

    double height(int from, int to) {
        return IntStream.range(from, to).mapToDouble(this::height).sum();
    }

    CardLinesPart begin() {
        return new CardLinesPart(List.of(card.begin()), style);
    }

    CardLinesPart after() {
        return new CardLinesPart(card.after(), style);
    }
}
