package thrumwright.editor.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;

/**
 * The blocks that are selected: some of one end, or none.
 *
 * @param ids without repetition; the last one leads: the form shows it
 */
public record Selection(Place place, List<String> ids) {
    public Selection {
        Objects.requireNonNull(place);
        ids = ids.stream().distinct().toList();
    }

    public static Selection none() {
        return new Selection(Place.START, List.of());
    }

    public static Selection of(Place place, String id) {
        return new Selection(place, List.of(id));
    }

    public boolean isEmpty() {
        return ids.isEmpty();
    }

    public boolean has(Place where, String id) {
        return place == where && ids.contains(id);
    }

    /** The block that was selected last. */
    public Optional<String> lead() {
        return ids.isEmpty() ? Optional.empty() : Optional.of(ids.get(ids.size() - 1));
    }

    /** The leading block itself. */
    public Optional<Block> leadIn(Piece piece) {
        return lead().flatMap(id -> piece.block(place, id));
    }

    /** As many of these blocks as a piece still has. */
    public Selection within(Piece piece) {
        List<String> there =
                ids.stream().filter(id -> piece.block(place, id).isPresent()).toList();
        return there.size() == ids.size() ? this : new Selection(place, there);
    }

    /** From the block that was selected first to another one of the same end, which leads from now on. */
    public Selection upTo(Piece piece, String id) {
        End end = piece.end(place);
        int from = ids.isEmpty() ? end.indexOf(id) : end.indexOf(ids.get(0));
        int to = end.indexOf(id);
        int step = from <= to ? 1 : -1;
        List<String> reached = new ArrayList<>();
        for (int i = from; i != to + step; i += step) {
            reached.add(end.blocks().get(i).id());
        }
        return new Selection(place, reached);
    }

    /** Reaching one block further up (1) or down (−1), as far as the end goes. */
    public Selection reaching(Piece piece, int by) {
        List<Block> blocks = piece.end(place).blocks();
        int next = lead().map(id -> piece.end(place).indexOf(id) + by).orElse(-1);
        return next < 0 || next >= blocks.size()
                ? this
                : upTo(piece, blocks.get(next).id());
    }

    /** The selected blocks in the order in which they stand, from the lowest. */
    public List<Block> blocksIn(Piece piece) {
        return piece.end(place).blocks().stream()
                .filter(block -> ids.contains(block.id()))
                .toList();
    }
}
