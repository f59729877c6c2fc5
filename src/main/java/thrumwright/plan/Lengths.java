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
    private final EndMemory.Recall recall;
    /** The blocks of one length, and their places. */
    private final List<Work> works = new ArrayList<>();

    private final List<Integer> places = new ArrayList<>();
    /** Whether they are the same as before, the first of them too. */
    private boolean known;
    /** Whether all of them can be joined on their way. */
    private boolean joins = true;
    /** The block from whose yarn the run is cut, though it could go on but for the edge. */
    private Optional<YarnBlock> cutFrom = Optional.empty();

    private Lengths(Piece piece, List<BlockPlan> plans, EndMemory.Recall recall) {
        this.piece = piece;
        this.plans = new ArrayList<>(plans);
        this.recall = recall;
    }

    /** The same blocks, each with the length that it is woven from. */
    static List<BlockPlan> joined(Piece piece, List<BlockPlan> plans, EndMemory.Recall recall) {
        Lengths lengths = new Lengths(piece, plans, recall);
        for (int i = 0; i < plans.size(); i++) {
            lengths.come(i, plans.get(i));
        }
        lengths.close();
        return lengths.plans;
    }

    private void come(int place, BlockPlan plan) {
        Work work = plan.work().orElse(null);
        boolean asBefore = work != null && !works.isEmpty() && isKnown(place, work);
        boolean endsAsBefore = !asBefore && work != null && !works.isEmpty() && endsAsBefore(place);
        boolean goesOn = !asBefore && !endsAsBefore && work != null && !works.isEmpty() && goesOn(last(), work);
        boolean slips = goesOn && work.slipsOff(last());
        boolean onward = asBefore || goesOn && !slips && holds(work);
        if (!onward && plan.fold().isEmpty()) {
            Optional<YarnBlock> left = slips ? Optional.of(last().block()) : Optional.empty();
            close();
            cutFrom = endsAsBefore ? before(place).cutFrom() : left;
        }
        if (work != null) {
            known = works.isEmpty() ? recall.joined(place) != null : asBefore;
            works.add(work);
            places.add(place);
            joins = joins && work.block().joins();
        }
    }

    /** What can't be joined on its way is woven from what the hand holds at once. */
    private boolean holds(Work next) {
        if (joins && next.block().joins()) {
            return true;
        }
        List<Work> longer = new ArrayList<>(works);
        longer.add(next);
        return together(longer).length() <= piece.habits().handful().mm();
    }

    private Cut together(List<Work> some) {
        return Cut.together(some, piece.habits(), piece.ease(some.get(0).yarn()), piece.reference());
    }

    private Work last() {
        return works.get(works.size() - 1);
    }

    private static boolean goesOn(Work from, Work into) {
        return from.block().goesOn()
                && into.block().goesOn()
                && from.block().comesOut() == into.block().comesOut()
                && from.yarn().id().equals(into.yarn().id())
                && from.ends() == into.begins();
    }

    private void close() {
        if (works.size() > 1 || cutFrom.isPresent()) {
            if (isKnown()) {
                places.forEach(place -> join(place, recall.joined(place).work().orElseThrow()));
            } else {
                Cut cut = works.size() > 1 ? together(works) : works.get(0).cut();
                List<YarnBlock> blocks = works.stream().map(Work::block).toList();
                for (int i = 0; i < works.size(); i++) {
                    join(places.get(i), works.get(i).in(length(blocks, i, cut)));
                }
            }
        }
        works.clear();
        places.clear();
        joins = true;
    }

    private void join(int place, Work work) {
        BlockPlan plan = plans.get(place);
        BlockPlan known = recall.joined(place);
        boolean same =
                known != null && known.bottom() == plan.bottom() && known.work().orElseThrow() == work;
        plans.set(place, same ? known : plan.with(work));
    }

    /** What those blocks were woven from, if they are the same as before. */
    private OneLength before() {
        return before(places.get(0));
    }

    private OneLength before(int place) {
        return recall.joined(place).work().orElseThrow().oneLength();
    }

    /** Whether just these blocks were woven from one length before, and that which comes now began another. */
    private boolean endsAsBefore(int next) {
        int last = places.get(places.size() - 1);
        return known
                && recall.keepsApart(last, next)
                && before().before().isEmpty()
                && before().after().size() == works.size() - 1
                && before(next).before().isEmpty();
    }

    /** Whether a block went on with just these before. */
    private boolean isKnown(int place, Work next) {
        return known
                && recall.joined(place) != null
                && before().before().isEmpty()
                && before().after().size() >= works.size()
                && before().after().get(works.size() - 1) == next.block();
    }

    /** Whether just these blocks, cut from the same, were woven from one length before. */
    private boolean isKnown() {
        return known
                && !works.isEmpty()
                && before().before().isEmpty()
                && before().cutFrom().equals(cutFrom)
                && before().after().size() == works.size() - 1;
    }

    private OneLength length(List<YarnBlock> blocks, int place, Cut cut) {
        return new OneLength(
                place == 0 ? cutFrom : Optional.empty(),
                place == 0 ? Optional.empty() : Optional.of(blocks.get(place - 1)),
                blocks.subList(place + 1, blocks.size()),
                cut);
    }
}
