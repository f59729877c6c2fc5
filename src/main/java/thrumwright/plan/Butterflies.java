package thrumwright.plan;

import thrumwright.measure.Decimals;
import thrumwright.piece.Habits;

/**
 * How a yarn that is longer than a comfortable handful is shared, if its lengths can be joined.
 *
 * @param count 1 or more
 * @param each length to cut for each, mm, a multiple of the weaver's step
 */
public record Butterflies(int count, double each) {
    /** Equal butterflies, each joining the next with an overlap. */
    static Butterflies of(double length, Habits habits) {
        double handful = habits.handful().mm();
        double overlap = habits.overlap().mm();
        int count = length <= handful ? 1 : (int) Math.ceil((length - overlap) / (handful - overlap) - 1e-9);
        double each = (length + (count - 1) * overlap) / count;
        return new Butterflies(count, Decimals.roundedUp(each, habits.step().mm()));
    }

    /** All of them together, mm, more than 0. */
    public double total() {
        return count * each;
    }
}
