package thrumwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    /** The block from whose yarn the run is cut, though it could go on but for the edge. */
    private Optional<YarnBlock> cutFrom = Optional.empty();

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
        Optional<Work> next = plan.work().filter(work -> !run.isEmpty() && goesOn(last(), work));
        boolean slips = next.filter(work -> work.slipsOff(last())).isPresent();
        boolean onward = !slips && next.filter(this::holds).isPresent();
        if (plan.fold().isEmpty() && !onward) {
            Optional<YarnBlock> left = slips ? Optional.of(last().block()) : Optional.empty();
            close();
            cutFrom = left;
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
                && from.ends() == into.begins();
    }

    private void close() {
        if (run.size() > 1 || cutFrom.isPresent()) {
            List<Work> works = run.stream().map(this::work).toList();
            Cut cut = run.size() > 1 ? together(works) : works.get(0).cut();
            for (int i = 0; i < run.size(); i++) {
                plans.set(run.get(i), plans.get(run.get(i)).with(works.get(i).in(length(works, i, cut))));
            }
        }
        run.clear();
    }

    private OneLength length(List<Work> works, int place, Cut cut) {
        List<YarnBlock> blocks = works.stream().map(Work::block).toList();
        return new OneLength(
                place == 0 ? cutFrom : Optional.empty(),
                place == 0 ? Optional.empty() : Optional.of(blocks.get(place - 1)),
                blocks.subList(place + 1, blocks.size()),
                cut);
    }
}
