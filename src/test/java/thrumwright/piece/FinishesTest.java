package thrumwright.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.measure.Length;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Finishes stand at the edge that stays, wherever they were put. */
class FinishesTest {
    private final Piece panel = Pieces.panel();
    private final WarpFinish fringe =
            new WarpFinish(Tag.of("fringe"), WarpFinish.Kind.KNOTTED, 4, Length.parse("10 cm"));

    private static List<String> ids(End end) {
        return end.blocks().stream().map(Block::id).toList();
    }

    @Test
    void aFinishGoesToTheEdgeFromWhereverItIsPut() {
        for (int i = 0; i <= panel.start().blocks().size(); i++) {
            Piece piece = panel.withStart(panel.start().with(i, fringe));
            assertThat(ids(piece.start()))
                    .containsExactly("ordering", "waste", "fringe", "twining", "stiff", "facing", "soumak", "fold");
            assertThat(ids(piece.end(Place.TOP)))
                    .containsExactly("fold", "soumak", "facing", "stiff", "twining", "fringe", "waste");
        }
    }

    @Test
    void inATopOfItsOwnTheEdgeIsAbove() {
        End top = panel.end(Place.TOP);
        for (int i = 0; i <= top.blocks().size(); i++) {
            Piece piece = panel.withTop(new Top.OnItsOwn(top.with(i, fringe)));
            assertThat(ids(piece.end(Place.TOP)))
                    .containsExactly("fold", "soumak", "facing", "stiff", "twining", "fringe", "waste");
        }
    }

    /** A row woven outside the fringe makes a new edge. */
    @Test
    void theEdgeMovesWithWhatStays() {
        Twining outside = new Twining(Tag.of("outside"), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.S, false);
        Piece fringed = panel.withStart(panel.start().with(2, fringe));
        Piece piece = fringed.withStart(fringed.start().with(1, outside));
        assertThat(ids(piece.start()).subList(0, 4)).containsExactly("ordering", "fringe", "outside", "waste");
    }

    @Test
    void whereNothingStaysTheEdgeIsTheDesigns() {
        Piece bare = panel.withStart(panel.start()
                .without(Set.of("twining", "stiff", "facing", "soumak", "fold"))
                .with(0, fringe));
        assertThat(ids(bare.start())).containsExactly("ordering", "waste", "fringe");
        assertThat(ids(bare.end(Place.TOP))).containsExactly("fringe", "waste");
    }

    /** So that what is drawn at the edge is where it is listed, too. */
    @Test
    void everyFinishStandsWhereItIsDrawn() {
        RandomPieces pieces = new RandomPieces(83);
        int finishes = 0;
        for (int i = 0; i < Seeds.of(1000); i++) {
            Plan plan = Plan.of(pieces.next());
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                for (BlockPlan block : end.blocks()) {
                    if (block.block() instanceof EdgeFinish) {
                        finishes++;
                        assertThat(block.bottom()).isEqualTo(end.edge());
                    }
                }
            }
        }
        assertThat(finishes).isGreaterThan(Seeds.of(500));
    }

    @Test
    void anEndThatHasItsFinishesThereStaysTheSame() {
        Piece fringed = panel.withStart(panel.start().with(2, fringe));
        assertThat(fringed.start().withFinishesAtTheEdge(Place.START)).isSameAs(fringed.start());
    }
}
