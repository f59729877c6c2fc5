package thrumwright.editor.edit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import thrumwright.block.Block;
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
        return new Selection(
                place,
                ids.stream().filter(id -> piece.block(place, id).isPresent()).toList());
    }

    /** The selected blocks in the order in which they stand, from the lowest. */
    public List<Block> blocksIn(Piece piece) {
        return piece.end(place).blocks().stream()
                .filter(block -> ids.contains(block.id()))
                .toList();
    }
}
