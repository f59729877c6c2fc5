package thrumwright.drawing.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.KnotRows;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.TurnedEnds;
import thrumwright.block.UsualCases;
import thrumwright.block.WarpFinish;
import thrumwright.block.WovenEdge;
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
        String id = block.block().id();
        end.blocks().stream().takeWhile(each -> !each.block().id().equals(id)).forEach(before::add);
        return before.stream()
                .noneMatch(worked -> of(worked).filter(slip::equals).isPresent());
    }

    /** That of a block, if there is one. */
    public static Optional<Slip> of(BlockPlan plan) {
        boolean leans = plan.work().filter(work -> leans(work.rows())).isPresent();
        return leans ? Optional.of(LEAN) : plan.block().of(new OfKinds(plan.work()));
    }

    /** What goes wrong with each kind; where nothing is known to, there is no picture of it. */
    private static final class OfKinds extends UsualCases<Optional<Slip>> {
        private final Optional<Work> work;

        OfKinds(Optional<Work> work) {
            this.work = work;
        }

        @Override
        public Optional<Slip> usual(Block block) {
            return Optional.empty();
        }

        @Override
        public Optional<Slip> orderingCord(OrderingCord cord) {
            return work.map(of -> of.setting().posts().isPresent() ? UNEVEN_ENDS : TIGHT_CORD);
        }

        @Override
        public Optional<Slip> plainBand(PlainBand band) {
            return work.flatMap(of -> Slip.of(band, of.rows().size()));
        }

        @Override
        public Optional<Slip> halfHitch(HalfHitch hitch) {
            return work.map(of -> UNCROSSED_HITCHES);
        }

        @Override
        public Optional<Slip> knotRows(KnotRows knots) {
            return Optional.of(UNEVEN_KNOTS);
        }

        @Override
        public Optional<Slip> turnedEnds(TurnedEnds turned) {
            return Optional.of(END_LEFT);
        }

        @Override
        public Optional<Slip> wovenEdge(WovenEdge woven) {
            return Optional.of(END_LEFT);
        }

        @Override
        public Optional<Slip> wrappedTassels(WrappedTassels tassels) {
            return Optional.of(GAPING_WRAPPING);
        }

        @Override
        public Optional<Slip> warpFinish(WarpFinish fringe) {
            return fringe.kind() == WarpFinish.Kind.KNOTTED ? Optional.of(UNEVEN_FRINGE) : Optional.empty();
        }
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
