package thrumwright.output.card;

import java.util.List;
import thrumwright.sheet.card.CardRow;

/**
 * The columns of a card from left to right, points.
 *
 * @param leads between the stack and the numbers
 * @param tag of the numbers
 * @param picture of the drawings; 0 for none
 * @param words what is left
 */
record CardColumns(double stack, double leads, double tag, double picture, double words) {
    private static final double GAP = 6;
    private static final double LEADS = 14;
    /** With smaller drawings than that share of the width everything draws together. */
    private static final double TIGHT = 0.14;

    private static final double LEAST_STACK = 30;
    private static final double MOST_STACK = 60;

    static CardColumns of(List<CardRow> rows, double width, CardStyle style) {
        boolean tight = style.form().picture() < TIGHT;
        double stack = tight ? LEAST_STACK : Math.max(LEAST_STACK, Math.min(MOST_STACK, width * 0.075));
        double leads = tight ? LEADS : LEADS + width * 0.012;
        NumberTag tag = new NumberTag(style);
        double widest =
                rows.stream().mapToDouble(row -> tag.width(row.number())).max().orElse(0);
        double picture = Math.max(0, width * style.form().picture());
        double gaps = picture > 0 ? 2 * GAP : GAP;
        return new CardColumns(stack, leads, widest, picture, width - stack - leads - widest - picture - gaps);
    }

    double tagRight() {
        return stack + leads + tag;
    }

    double pictureLeft() {
        return tagRight() + GAP;
    }

    double wordsLeft() {
        return pictureLeft() + (picture > 0 ? picture + GAP : 0);
    }
}
