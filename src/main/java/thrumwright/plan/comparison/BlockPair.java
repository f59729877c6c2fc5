package thrumwright.plan.comparison;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import thrumwright.block.Block;
import thrumwright.block.Lean;
import thrumwright.block.Passing;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Work;

/**
 * A block of the start and the one that answers it in the top; one of them may be missing.
 *
 * @param differences in what they differ as they are woven on the loom, in the order of {@link Aspect}
 */
public record BlockPair(Optional<BlockPlan> start, Optional<BlockPlan> top, Set<Aspect> differences) {
    /** Heights that differ by less count as one, mm. */
    private static final double SAME_HEIGHT = 0.05;

    /** In what two blocks can differ. */
    public enum Aspect {
        /** The top has no such block. */
        LEFT_OUT,
        /** The start has no such block. */
        ADDED,
        /** What the block is for. */
        KIND,
        /** How it is worked: ends taken together, over and under, the fold's turn and bar, the fringe. */
        WORKING,
        YARN,
        /** Number of picks or rows. */
        ROWS,
        HEIGHT,
        /** Which way the stitches of the row that is woven first lean. */
        LEAN,
        /** How the first pick meets the outermost end where it begins. */
        SHED,
        /** The side at which the yarn begins. */
        SIDE,
        /** Whether it comes out again. */
        COMES_OUT
    }

    public BlockPair {
        Objects.requireNonNull(start);
        Objects.requireNonNull(top);
        EnumSet<Aspect> ordered = EnumSet.noneOf(Aspect.class);
        ordered.addAll(differences);
        differences = Collections.unmodifiableSet(ordered);
    }

    /** Both of an aligned line, with what differs. */
    static BlockPair of(Optional<BlockPlan> start, Optional<BlockPlan> top) {
        Set<Aspect> differences = EnumSet.noneOf(Aspect.class);
        if (top.isEmpty()) {
            differences.add(Aspect.LEFT_OUT);
        } else if (start.isEmpty()) {
            differences.add(Aspect.ADDED);
        } else {
            compare(start.get(), top.get(), differences);
        }
        return new BlockPair(start, top, differences);
    }

    /** The block that is there: the start's, else the top's. */
    public Block block() {
        return start.or(() -> top).orElseThrow().block();
    }

    public boolean has(Aspect aspect) {
        return differences.contains(aspect);
    }

    private static void compare(BlockPlan start, BlockPlan top, Set<Aspect> into) {
        if (!start.block().key().equals(top.block().key())) {
            into.add(Aspect.KIND);
        } else if (!Likeness.bare(start.block()).equals(Likeness.bare(top.block()))) {
            into.add(Aspect.WORKING);
        }
        if (Math.abs(start.height() - top.height()) >= SAME_HEIGHT) {
            into.add(Aspect.HEIGHT);
        }
        if (start.comesOut() != top.comesOut()) {
            into.add(Aspect.COMES_OUT);
        }
        if (differ(start.yarn(), top.yarn())) {
            into.add(Aspect.YARN);
        }
        if (start.work().isPresent() && top.work().isPresent()) {
            compare(start.work().get(), top.work().get(), into);
        }
    }

    private static void compare(Work start, Work top, Set<Aspect> into) {
        add(Aspect.ROWS, start.rows().size() != top.rows().size(), into);
        add(Aspect.LEAN, differ(firstLean(start), firstLean(top)), into);
        add(Aspect.SHED, differ(firstMeeting(start), firstMeeting(top)), into);
        add(Aspect.SIDE, start.begins() != top.begins(), into);
    }

    private static void add(Aspect aspect, boolean differs, Set<Aspect> into) {
        if (differs) {
            into.add(aspect);
        }
    }

    /** A block of another kind may have neither yarn, shed nor lean; that it is of another kind is enough then. */
    private static <T> boolean differ(Optional<T> start, Optional<T> top) {
        return start.isPresent() && top.isPresent() && start.get() != top.get() && !start.equals(top);
    }

    /** How the pick that is woven first meets the outermost end where it begins; empty where a row uses no shed. */
    public static Optional<Passing> firstMeeting(Work work) {
        return work.rows().get(0).meets(work.setting().ends());
    }

    /** Which way the stitches lean in the row that is woven first; empty where none do. */
    public static Optional<Lean> firstLean(Work work) {
        return work.rows().get(0).lean();
    }
}
