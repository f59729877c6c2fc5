package thrumwright.plan;

import java.util.List;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.YarnBlock;
import thrumwright.yarn.Yarn;

/**
 * The weaving of one block with its yarn.
 *
 * @param rows in the order of working, at least one; not copied, since long lists of them are made while they are read
 */
public record Work(YarnBlock block, Yarn yarn, Setting setting, List<Row> rows, Cut cut) {
    /** On the loom, mm, more than 0. */
    public double height() {
        return block.height(setting);
    }

    /** Whether its rows part the rows below from those above; else it lies on cloth that is woven. */
    public boolean stands() {
        return block.lap(setting) == 0;
    }

    /** The side where the yarn begins. */
    public Side begins() {
        return rows.get(0).from();
    }

    /** The side where it ends. */
    public Side ends() {
        return rows.get(rows.size() - 1).to();
    }

    /** Where its tails hang, in the order in which they come about; a tied cord has none. */
    public List<Side> tails() {
        if (block.tied()) {
            return List.of();
        }
        return block.folded() ? List.of(ends(), ends()) : List.of(begins(), ends());
    }
}
