package thrumwright.plan;

import thrumwright.block.Setting;
import thrumwright.block.WrappedTassels;
import thrumwright.piece.Habits;
import thrumwright.yarn.Yarn;

/**
 * The yarn with which tassels are wrapped.
 *
 * @param height of the wrapping, mm
 * @param count number of tassels
 * @param each to cut for each of them
 */
public record Wrapping(Yarn yarn, double height, int count, Cut each) {
    /**
     * A loop as long as the wrapping is laid along the tassel, wrapped over, and draws the yarn's end under; both tails are
     * held meanwhile (common practice, no source).
     */
    static Wrapping of(
            WrappedTassels tassels, Yarn yarn, Setting setting, Habits habits, double easing, double reference) {
        double height = tassels.wrapped(setting);
        double hanging = 2 * height + 2 * habits.tail().mm();
        Cut each = Cut.of(tassels.lengthOfOne(setting), hanging, habits, easing, reference);
        return new Wrapping(yarn, height, tassels.groups(setting.ends()).size(), each);
    }

    /** All of them together, mm, more than 0. */
    public double total() {
        return count * each.length();
    }
}
