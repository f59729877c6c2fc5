package thrumwright.editor.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import thrumwright.block.Block;
import thrumwright.block.PlainBand;
import thrumwright.measure.Length;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** What is typed over a measure of the picture. */
public record MeasureEdits(Edits edits) {
    /**
     * A hem as deep as that, to whole picks or rows: its facing or stiff band becomes higher or lower.
     * Empty where no block gives the depth, as under a band that is sewn on.
     */
    public Optional<Edit> hemDepth(Plan now, Place where, Length wanted) {
        Place place = now.piece().topFollows() ? Place.START : where;
        EndPlan end = now.end(place);
        return end.hem()
                .filter(hem -> hem.band().isEmpty())
                .flatMap(hem -> givesDepth(end)
                        .map(block -> edits.amount(
                                place,
                                block.block(),
                                Amounts.ofHeight(
                                        block.block(),
                                        Math.max(0.1, block.height() + wanted.mm() - hem.depth()),
                                        now.piece(),
                                        place))));
    }

    /** The facing, else the stiff band, else whatever of the hem is woven; of several the one next to the fold. */
    private static Optional<BlockPlan> givesDepth(EndPlan end) {
        return nextToFold(end, block -> isBand(block, PlainBand.Purpose.FACING))
                .or(() -> nextToFold(end, block -> isBand(block, PlainBand.Purpose.STIFF)))
                .or(() -> nextToFold(end, block -> block.woven().isPresent()));
    }

    private static boolean isBand(Block block, PlainBand.Purpose purpose) {
        return block instanceof PlainBand band && band.purpose() == purpose;
    }

    private static Optional<BlockPlan> nextToFold(EndPlan end, Predicate<Block> wanted) {
        List<BlockPlan> side = end.hemSide();
        Optional<BlockPlan> next = Optional.empty();
        for (BlockPlan block : side) {
            boolean first = next.isEmpty() || end.place() == Place.START;
            if (first && block.stays() && wanted.test(block.block()) && block.height() > 0) {
                next = Optional.of(block);
            }
        }
        return next;
    }

    /** @param label of the field that says the same */
    public Edit hands(Length room, String label) {
        return edits.field(label, "", piece -> piece.withLoom(piece.loom().withWorkingRoom(Optional.of(room))));
    }

    /** @param label of the field that says the same */
    public Edit below(Length clearance, String label) {
        return edits.field(label, "", piece -> piece.withLoom(piece.loom().withClearance(Optional.of(clearance))));
    }
}
