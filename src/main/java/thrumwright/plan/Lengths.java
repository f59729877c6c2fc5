package thrumwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Row;
import thrumwright.block.Shed;
import thrumwright.block.YarnBlock;
import thrumwright.piece.Piece;

/**
 * Joins neighbours of one yarn: where one ends at the side at which the next begins, the yarn goes on and nothing is cut.
 * Only a fold, which is nothing but a line, may lie between.
 */
final class Lengths {
    private final Piece piece;
    private final List<BlockPlan> plans;
    /** The blocks of one length, by their places. */
    private final List<Integer> run = new ArrayList<>();

    private Lengths(Piece piece, List<BlockPlan> plans) {
        this.piece = piece;
        this.plans = new ArrayList<>(plans);
    }

    /** The same blocks, each with the length that it is woven from. */
    static List<BlockPlan> joined(Piece piece, List<BlockPlan> plans) {
        Lengths lengths = new Lengths(piece, plans);
        for (int i = 0; i < plans.size(); i++) {
            lengths.come(i, plans.get(i));
        }
        lengths.close();
        return lengths.plans;
    }

    private void come(int place, BlockPlan plan) {
        boolean through = plan.fold().isPresent();
        boolean onward = !run.isEmpty()
                && plan.work()
                        .filter(next -> goesOn(last(), next) && holds(next))
                        .isPresent();
        if (!through && !onward) {
            close();
        }
        if (plan.work().isPresent()) {
            run.add(place);
        }
    }

    /** What can't be joined on its way is woven from what the hand holds at once. */
    private boolean holds(Work next) {
        List<Work> works = new ArrayList<>(run.stream().map(this::work).toList());
        works.add(next);
        return works.stream().allMatch(work -> work.block().joins())
                || together(works).length() <= piece.habits().handful().mm();
    }

    private Cut together(List<Work> works) {
        return Cut.together(works, piece.habits(), piece.ease(works.get(0).yarn()), piece.reference());
    }

    private Work last() {
        return work(run.get(run.size() - 1));
    }

    private Work work(int place) {
        return plans.get(place).work().orElseThrow();
    }

    private static boolean goesOn(Work from, Work into) {
        return from.block().goesOn()
                && into.block().goesOn()
                && from.block().comesOut() == into.block().comesOut()
                && from.yarn().id().equals(into.yarn().id())
                && from.ends() == into.begins()
                && !inOneShed(from, into);
    }

    /** Then the yarn would lie back over the pick before and hold nothing at the edge. */
    private static boolean inOneShed(Work from, Work into) {
        List<Row> rows = from.rows();
        Optional<Shed> last = rows.get(rows.size() - 1).shed();
        return last.isPresent() && last.equals(into.rows().get(0).shed());
    }

    private void close() {
        if (run.size() > 1) {
            List<Work> works = run.stream().map(this::work).toList();
            List<YarnBlock> blocks = works.stream().map(Work::block).toList();
            Cut cut = together(works);
            for (int i = 0; i < run.size(); i++) {
                Optional<YarnBlock> before = i == 0 ? Optional.empty() : Optional.of(blocks.get(i - 1));
                OneLength length = new OneLength(before, blocks.subList(i + 1, blocks.size()), cut);
                plans.set(run.get(i), plans.get(run.get(i)).with(works.get(i).in(length)));
            }
        }
        run.clear();
    }
}
