package thrumwright.drawing.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.HalfHitch;
import thrumwright.block.KnotRows;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.TurnedEnds;
import thrumwright.block.WarpFinish;
import thrumwright.block.WrappedTassels;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;

/** What beginners get wrong in a block, where a picture of it helps (common practice, no source). */
public enum Slip {
    /** The stitches of a twined or soumak row lean the other way. */
    LEAN,
    /** A cord round posts is woven on ends that stand unevenly. */
    UNEVEN_ENDS,
    /** A cord that turns at the edge is drawn too tight. */
    TIGHT_CORD,
    /** The edges of a band are drawn in. */
    DRAWN_IN,
    /** Two picks lie in one shed. */
    SAME_SHED,
    /** Both wraps of a hitch go one way and don't cross. */
    UNCROSSED_HITCHES,
    /** The first row's knots stand off the edge, each at a height of its own. */
    UNEVEN_KNOTS,
    /** Groups of a fringe are uneven, and their knots stand off the edge. */
    UNEVEN_FRINGE,
    /** A warp end wasn't turned. */
    END_LEFT,
    /** The turns of a wrapping don't touch. */
    GAPING_WRAPPING;

    /**
     * That of a block, where its step should show it: once where it is first worked, but which way stitches lean every
     * time, and what becomes of the warp ends at either end.
     */
    public static Optional<Slip> toShow(Plan plan, EndPlan end, BlockPlan block) {
        return of(block).filter(slip -> slip == LEAN || block.work().isEmpty() || first(plan, end, block, slip));
    }

    private static boolean first(Plan plan, EndPlan end, BlockPlan block, Slip slip) {
        List<BlockPlan> before = new ArrayList<>();
        if (end.place() == Place.TOP) {
            before.addAll(plan.start().blocks());
        }
        before.addAll(end.blocks().subList(0, end.blocks().indexOf(block)));
        return before.stream()
                .noneMatch(worked -> of(worked).filter(slip::equals).isPresent());
    }

    /** That of a block, if there is one. */
    public static Optional<Slip> of(BlockPlan plan) {
        if (plan.work().isPresent()) {
            return of(plan.work().get());
        } else if (plan.block() instanceof KnotRows) {
            return Optional.of(UNEVEN_KNOTS);
        } else if (plan.block() instanceof TurnedEnds) {
            return Optional.of(END_LEFT);
        } else if (plan.block() instanceof WrappedTassels) {
            return Optional.of(GAPING_WRAPPING);
        }
        return plan.block() instanceof WarpFinish fringe && fringe.kind() == WarpFinish.Kind.KNOTTED
                ? Optional.of(UNEVEN_FRINGE)
                : Optional.empty();
    }

    private static Optional<Slip> of(Work work) {
        if (leans(work.rows())) {
            return Optional.of(LEAN);
        } else if (work.block() instanceof OrderingCord) {
            return Optional.of(work.setting().posts().isPresent() ? UNEVEN_ENDS : TIGHT_CORD);
        } else if (work.block() instanceof HalfHitch) {
            return Optional.of(UNCROSSED_HITCHES);
        }
        return work.block() instanceof PlainBand band ? of(band, work.rows().size()) : Optional.empty();
    }

    /** Each of a band's two pictures once in the usual end: the waste band comes first, the stiff band draws hardest. */
    private static Optional<Slip> of(PlainBand band, int picks) {
        return switch (band.purpose()) {
            case STIFF -> Optional.of(DRAWN_IN);
            case FACING -> Optional.empty();
            case WASTE, PLAIN -> picks > 1 ? Optional.of(SAME_SHED) : Optional.empty();
        };
    }

    private static boolean leans(List<Row> rows) {
        return rows.get(0).lean().isPresent();
    }

    /** Whether it moves warp ends aside. */
    boolean strains() {
        return this == UNEVEN_ENDS || this == TIGHT_CORD || this == DRAWN_IN;
    }
}
