package thrumwright.output.card;

import java.util.ArrayList;
import java.util.List;

/**
 * How closely a card is set.
 *
 * @param scale of what is read from afar, times its least size, 1 or more
 * @param lines how the large words of a row are set
 * @param picture share of a card's width that the drawings take, 0 to 1; 0 for none, less where there is room for nothing else
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

    /** Larger type than that is of no use, points. */
    private static final double LARGEST = 38;

    /** The very least, for large letters on small pages: names in one line, and no more in the head than which card it is. */
    private static final CardForm BARE = new CardForm(1, Lines.ONE, -1);

    private static final List<Double> SCALES = List.of(2.4, 2.0, 1.7, 1.5, 1.35, 1.2, 1.1);
    private static final List<Double> PICTURES = List.of(0.38, 0.33, 0.28, 0.22);
    /** At the least size, the best to read first. */
    private static final List<CardForm> LEAST = List.of(
            new CardForm(1, Lines.ROOMY, 0.34),
            new CardForm(1, Lines.ROOMY, 0.3),
            new CardForm(1, Lines.ROOMY, 0.26),
            new CardForm(1, Lines.ROOMY, 0.22),
            new CardForm(1, Lines.DENSE, 0.23),
            new CardForm(1, Lines.DENSE, 0.19),
            new CardForm(1, Lines.DENSE, 0.16),
            new CardForm(1, Lines.DENSE, 0.135),
            new CardForm(1, Lines.ONE, 0.15),
            new CardForm(1, Lines.ONE, 0.12),
            new CardForm(1, Lines.ONE, 0.09),
            new CardForm(1, Lines.DENSE, 0),
            new CardForm(1, Lines.ONE, 0),
            BARE);

    /**
     * Forms to try, the best to read first.
     *
     * @param large the least size of what is read from afar, points
     */
    static List<CardForm> all(double large) {
        List<CardForm> all = new ArrayList<>();
        for (double scale : SCALES) {
            if (scale * large <= LARGEST) {
                PICTURES.forEach(picture -> all.add(new CardForm(scale, Lines.ROOMY, picture)));
            }
        }
        all.addAll(LEAST);
        return all;
    }

    boolean bare() {
        return picture < 0;
    }

    boolean roomy() {
        return lines == Lines.ROOMY;
    }
}
