package thrumwright.plan.finding;

import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.comparison.Front;

/**
 * Makes up for what came out otherwise than planned, in the hem's last plain band that isn't woven yet.
 *
 * @param end as woven
 * @param measured how many of its blocks are woven for sure, 0 or more
 */
record MakingUp(Piece piece, EndPlan end, int measured) {
    /**
     * Picks more or fewer, by pairs where that brings it near enough, so that no shed changes; nothing where they can't
     * bring it back.
     *
     * @param by how much the hem is to gain, mm
     */
    Optional<Made> by(double by) {
        return band().flatMap(band -> by(band, by));
    }

    /**
     * @param gain what the hem gains by it, mm, either sign
     */
    record Made(BlockPlan band, Repair.Picks picks, double gain) {
        int more() {
            return picks.picks() - picks.before();
        }
    }

    private Optional<Made> by(BlockPlan band, double by) {
        int rows = band.work().orElseThrow().rows().size();
        double pick = band.height() / rows;
        int pairs = 2 * (int) Math.round(by / (2 * pick));
        int more = near(by, pairs, pick) ? pairs : (int) Math.round(by / pick);
        boolean possible = more != 0 && near(by, more, pick) && rows + more >= 1 && rows + more <= Amount.MOST_ROWS;
        return possible
                ? Optional.of(new Made(
                        band, new Repair.Picks(end.place(), band.block().id(), rows, rows + more), more * pick))
                : Optional.empty();
    }

    private static boolean near(double by, int more, double pick) {
        return Math.abs(by - more * pick) < Front.SAME_DEPTH - 1e-6;
    }

    /** The one next to the fold. Of a top that follows the start nothing can be changed by itself. */
    private Optional<BlockPlan> band() {
        boolean start = end.place() == Place.START;
        if (!start && piece.topFollows()) {
            return Optional.empty();
        }
        return end.blocks().subList(measured, end.blocks().size()).stream()
                .filter(block -> end.hemSide().contains(block) && block.stays())
                .filter(block -> block.block().woven().orElseThrow().plainWeave())
                .reduce((one, other) -> start ? other : one);
    }
}
