package thrumwright.editor.edit;

import java.util.List;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** What is typed over a measure of the picture. */
public record MeasureEdits(Edits edits) {
    /**
     * A hem as deep as that, to whole picks or rows: the block of it that lies next to the fold becomes higher or lower.
     * Empty where no block gives the depth, as under a band that is sewn on.
     */
    public Optional<Edit> hemDepth(Plan now, Place where, Length wanted) {
        Place place = now.piece().topFollows() ? Place.START : where;
        EndPlan end = now.end(place);
        return end.hem()
                .filter(hem -> hem.band().isEmpty())
                .flatMap(hem -> nextToFold(end)
                        .map(block -> edits.amount(
                                place,
                                block.block(),
                                Amounts.ofHeight(
                                        block.block(),
                                        Math.max(0.1, block.height() + wanted.mm() - hem.depth()),
                                        now.piece(),
                                        place))));
    }

    private static Optional<BlockPlan> nextToFold(EndPlan end) {
        List<BlockPlan> side = end.hemSide();
        Optional<BlockPlan> next = Optional.empty();
        for (BlockPlan block : side) {
            boolean first = next.isEmpty() || end.place() == Place.START;
            if (first && block.stays() && block.block().woven().isPresent() && block.height() > 0) {
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
