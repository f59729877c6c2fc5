package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import thrumwright.block.OpenWarp;
import thrumwright.block.Tag;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.testing.Pieces;

/** Open warp lifts all that stands above it and takes no yarn. */
class OpenWarpTest {
    @Test
    void everythingAboveAGapStandsAsMuchHigher() {
        Piece panel = Pieces.panel();
        Plan without = Plan.of(panel);
        Plan with = Plan.of(panel.withStart(panel.start().with(0, new OpenWarp(Tag.of("gap"), Length.parse("2 cm")))));

        for (BlockPlan block : without.start().blocks()) {
            BlockPlan lifted = with.start().block(block.block().id()).orElseThrow();
            assertThat(with.start().reach(lifted)).isCloseTo(without.start().reach(block) + 20, within(1e-9));
            assertThat(lifted.work().map(Work::cut)).isEqualTo(block.work().map(Work::cut));
        }
        assertThat(with.start().blocks().get(0).work()).isEmpty();
    }
}
