package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.block.Side;
import thrumwright.block.YarnBlock;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** A plan that takes over what was known is the plan that nothing was known for. */
class PlannedTest {
    private final Random random = new Random(11);

    @Test
    void isThePlanOfThePieceAlone() {
        RandomPieces pieces = new RandomPieces(2);
        int taken = 0;
        int edits = 0;
        for (int i = 0; i < Math.max(60, Seeds.of(1000)); i++) {
            Piece piece = pieces.next(1 + random.nextInt(40));
            Planned planned = Planned.of(piece);
            for (int j = 0; j < 12; j++) {
                piece = edited(piece);
                Planned next = planned.next(piece);
                assertSame(next.plan(), Plan.of(piece));
                taken += taken(planned.plan().start(), next.plan().start());
                edits++;
                planned = random.nextInt(4) == 0 ? planned : next;
            }
        }
        assertThat(taken).as("blocks taken over").isGreaterThan(3 * edits);
    }

    /** Rows are made when they are read and have no end of their own to be equal by, so that they are looked at one by one. */
    private static void assertSame(Plan plan, Plan alone) {
        for (Place place : Place.values()) {
            List<BlockPlan> blocks = plan.end(place).blocks();
            List<BlockPlan> others = alone.end(place).blocks();
            assertThat(blocks).isEqualTo(others);
        }
        assertThat(plan).isEqualTo(alone);
        assertThat(plan.hashCode()).isEqualTo(alone.hashCode());
    }

    private static int taken(EndPlan before, EndPlan now) {
        int taken = 0;
        for (BlockPlan block : now.blocks()) {
            boolean same = block.work().isPresent()
                    && before.block(block.block().id())
                            .flatMap(BlockPlan::work)
                            .filter(work -> work == block.work().get())
                            .isPresent();
            taken += same ? 1 : 0;
        }
        return taken;
    }

    private Piece edited(Piece piece) {
        End start = piece.start();
        int size = start.blocks().size();
        return switch (random.nextInt(10)) {
            case 0 -> piece.withTitle("Another");
            case 1 ->
                piece.withTop(
                        piece.topFollows()
                                ? new Top.OnItsOwn(piece.end(Place.TOP))
                                : Top.FollowsStart.withoutOrderingCords(start));
            case 2 -> piece.withHabits(Pieces.panel().habits());
            case 3 -> piece.withStart(start.without(Set.of(any(start).id())));
            case 4 -> size < 2 ? piece : piece.withStart(moved(start));
            case 5 ->
                piece.withStart(start.with(
                        random.nextInt(size + 1),
                        Pieces.hemmed()
                                .blocks()
                                .get(random.nextInt(5))
                                .withTag(any(start).tag().withId(start.freeId("more")))));
            default -> piece.withStart(start.map(this::perhapsOther));
        };
    }

    private static Block first(End end) {
        return end.blocks().isEmpty()
                ? Pieces.hemmed().blocks().get(0)
                : end.blocks().get(0);
    }

    private Block any(End end) {
        return end.blocks().isEmpty()
                ? first(end)
                : end.blocks().get(random.nextInt(end.blocks().size()));
    }

    private End moved(End end) {
        List<Block> blocks = new ArrayList<>(end.blocks());
        Block block = blocks.remove(random.nextInt(blocks.size()));
        blocks.add(random.nextInt(blocks.size() + 1), block);
        return new End(blocks);
    }

    private Block perhapsOther(Block block) {
        if (random.nextInt(6) > 0 || block.woven().isEmpty()) {
            return block;
        }
        YarnBlock woven = block.woven().get();
        return random.nextBoolean()
                ? woven.withUse(woven.use().withFrom(Optional.of(Side.LEFT)))
                : rows(woven, 1 + random.nextInt(9));
    }

    private static Block rows(YarnBlock block, int rows) {
        try {
            return block.withRows(rows);
        } catch (IllegalArgumentException e) {
            return block;
        }
    }

    @Test
    void whatIsAskedAgainOfTheSamePieceIsAllTakenOver() {
        Planned planned = Planned.of(Pieces.panel());
        Plan again = planned.next(Pieces.panel()).plan();
        assertThat(again).isEqualTo(planned.plan());
        assertThat(again.start().blocks().get(1))
                .isSameAs(planned.plan().start().blocks().get(1));
        assertThat(again.start().before()).isEqualTo(Course.beginning());
    }
}
