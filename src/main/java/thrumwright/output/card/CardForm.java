package thrumwright.output.card;

import java.util.List;

/**
 * How closely a card is set.
 *
 * @param scale of what is read from afar, times its least size, 1 or more
 * @param lines how the large words of a row are set
 * @param picture share of a card's width that the drawings take, 0 to 1; 0 for none
 */
record CardForm(double scale, Lines lines, double picture) {
    /** How the large words of a row are set. */
    enum Lines {
        /** The name above the rows, boxes and cut below. */
        ROOMY,
        /** The same two lines, with boxes and cut beside them. */
        DENSE,
        /** All in one line where it is long enough. */
        ONE
    }

    /** Forms to try, the best to read first. */
    static final List<CardForm> ALL = List.of(
            new CardForm(1.5, Lines.ROOMY, 0.34),
            new CardForm(1.3, Lines.ROOMY, 0.32),
            new CardForm(1.15, Lines.ROOMY, 0.3),
            new CardForm(1, Lines.ROOMY, 0.28),
            new CardForm(1, Lines.ROOMY, 0.22),
            new CardForm(1, Lines.DENSE, 0.19),
            new CardForm(1, Lines.DENSE, 0.15),
            new CardForm(1, Lines.DENSE, 0.12),
            new CardForm(1, Lines.ONE, 0.15),
            new CardForm(1, Lines.ONE, 0.11),
            new CardForm(1, Lines.DENSE, 0),
            new CardForm(1, Lines.ONE, 0));

    boolean roomy() {
        return lines == Lines.ROOMY;
    }
}
