package thrumwright.plan;

import java.util.List;
import thrumwright.block.Setting;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Decimals;
import thrumwright.piece.Habits;

/**
 * What to cut for a block.
 *
 * @param exact yarn in the cloth, mm
 * @param ease added so that the yarn isn't pulled tight, mm
 * @param hanging added for both tails or ties, mm
 * @param length to cut, mm: the sum, rounded up to the weaver's step
 * @param widths how many times the reference width that is, rounded up to a half
 * @param butterflies the same length shared into handfuls, if it can be joined; else one
 */
public record Cut(double exact, double ease, double hanging, double length, double widths, Butterflies butterflies) {
    static Cut of(YarnBlock block, Setting setting, Habits habits, double easing, double reference) {
        double hanging = 2 * (block.tied() ? habits.tie() : habits.tail()).mm();
        Cut whole = of(block.lengthOfEach(setting), hanging, habits, easing, reference);
        Cut one = block.joins() ? whole.shared(habits) : whole;
        int lengths = block.lengths(setting);
        return lengths == 1 ? one : one.times(lengths, reference);
    }

    /** One length of a yarn for several blocks, with the turns between them, one ease and two tails. */
    static Cut together(List<Work> works, Habits habits, double easing, double reference) {
        double exact = 0;
        boolean joins = true;
        for (Work work : works) {
            exact += work.cut().exact();
            joins = joins && work.block().joins();
        }
        for (int i = 1; i < works.size(); i++) {
            exact += works.get(i - 1).onward(works.get(i));
        }
        Cut whole = of(exact, 2 * habits.tail().mm(), habits, easing, reference);
        return joins ? whole.shared(habits) : whole;
    }

    /** As many such cuts, which lie side by side. */
    private Cut times(int strands, double reference) {
        return new Cut(
                strands * exact,
                strands * ease,
                strands * hanging,
                strands * length,
                Decimals.roundedUp(strands * length / reference, 0.5),
                new Butterflies(strands * butterflies.count(), butterflies.each()));
    }

    /** The same in handfuls. */
    private Cut shared(Habits habits) {
        return new Cut(exact, ease, hanging, length, widths, Butterflies.of(length, habits));
    }

    /** In one length. */
    static Cut of(double exact, double hanging, Habits habits, double easing, double reference) {
        double ease = exact * easing;
        double length = Decimals.roundedUp(exact + ease + hanging, habits.step().mm());
        double widths = Decimals.roundedUp(length / reference, 0.5);
        return new Cut(exact, ease, hanging, length, widths, new Butterflies(1, length));
    }
}
