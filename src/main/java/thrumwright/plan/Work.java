package thrumwright.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.Passing;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.YarnBlock;
import thrumwright.yarn.Yarn;

/**
 * The weaving of one block with its yarn.
 *
 * @param rows in the order of working, at least one; not copied, since long lists of them are made while they are read
 * @param cut as if its yarn were cut for it alone
 * @param oneLength what its yarn is cut for
 */
public record Work(YarnBlock block, Yarn yarn, Setting setting, List<Row> rows, Cut cut, OneLength oneLength) {
    /** With a yarn of its own. */
    public Work(YarnBlock block, Yarn yarn, Setting setting, List<Row> rows, Cut cut) {
        this(block, yarn, setting, rows, cut, OneLength.alone(cut));
    }

    Work in(OneLength other) {
        return new Work(block, yarn, setting, rows, cut, other);
    }

    /** What is cut when it is begun, for it and for all that go on with its yarn; empty where it goes on itself. */
    public Optional<Cut> toCut() {
        return oneLength.before().isEmpty() ? Optional.of(oneLength.cut()) : Optional.empty();
    }

    /** The same by itself, going on from another row: its sheds and sides change, and no figure. */
    Work goingOn(Course before) {
        return new Work(block, yarn, setting, block.rows(setting, before), cut);
    }

    /** What is cut for it in all, mm, 0 or more. */
    double cutTotal() {
        return toCut().map(cut -> cut.butterflies().total()).orElse(0.0);
    }

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

    /**
     * Whether its first pick would lie back along the edge end on the face where a yarn comes from that goes on into it: then
     * nothing would hold it there. What is wrapped or hitched goes round that end by itself.
     */
    boolean slipsOff(Work from) {
        return rows.get(0).meets(setting.ends()).equals(Optional.of(from.leaves()));
    }

    /** Half way round the edge end, where a yarn that goes on into a pick comes to its other face; else 0. mm, 0 or more. */
    double onward(Work next) {
        boolean turns = next.rows.get(0).meets(setting.ends()).orElse(Passing.OVER) != leaves();
        return turns ? setting.turn((rowHeight() + next.rowHeight()) / 2) : 0;
    }

    private Passing leaves() {
        return rows.get(rows.size() - 1).leaves(setting.ends());
    }

    private double rowHeight() {
        return height() / rows.size();
    }

    /** Where its tails hang, in the order in which they come about; none where a cord is tied or a yarn goes on. */
    public List<Side> tails() {
        if (block.tied()) {
            return List.of();
        } else if (block.folded()) {
            return List.of(ends(), ends());
        }
        List<Side> tails = new ArrayList<>();
        if (block.inParts()) {
            int parts = block.lengths(setting);
            tails.addAll(Collections.nCopies(parts, begins()));
            tails.addAll(Collections.nCopies(parts, ends()));
            return tails;
        }
        if (oneLength.before().isEmpty()) {
            tails.add(begins());
        }
        if (oneLength.after().isEmpty()) {
            tails.add(ends());
        }
        return tails;
    }
}
