package thrumwright.editor.edit;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import thrumwright.block.Block;
import thrumwright.block.Tag;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;

/** The edits that there are. A top that follows the start is never edited by itself. */
public final class Edits {
    private Edits() {}

    /** Any change of the piece that leaves the choice alone. */
    public static Edit piece(String name, UnaryOperator<Piece> change) {
        return new Edit(name, state -> new State(change.apply(state.piece()), state.chosen()));
    }

    /** Puts a block in, above the chosen one, and chooses it. */
    public static Edit add(String name, Place place, Block block) {
        return new Edit(name, state -> {
            End end = state.piece().end(place);
            Block named =
                    block.withTag(new Tag(end.freeId(block.id()), block.tag().label()));
            int index = state.chosen()
                    .filter(chosen -> chosen.place() == place)
                    .map(chosen -> end.indexOf(chosen.blockId()) + 1)
                    .orElse(end.blocks().size());
            Piece piece = state.piece().withEnd(place, end.with(index, named));
            return new State(piece, Optional.of(new Chosen(place, named.id())));
        });
    }

    /** Takes a block out and chooses its neighbour. */
    public static Edit remove(String name, Chosen chosen) {
        return new Edit(name, state -> {
            End end = state.piece().end(chosen.place());
            int index = end.indexOf(chosen.blockId());
            End less = end.without(Set.of(chosen.blockId()));
            Optional<Chosen> next = less.blocks().isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Chosen(
                            chosen.place(),
                            less.blocks()
                                    .get(Math.min(index, less.blocks().size() - 1))
                                    .id()));
            return new State(forgotten(state.piece(), chosen).withEnd(chosen.place(), less), next);
        });
    }

    /** A block that is gone can't be left out at the top any more. */
    private static Piece forgotten(Piece piece, Chosen chosen) {
        if (chosen.place() == Place.START && piece.top() instanceof Top.FollowsStart follows) {
            Set<String> left = new HashSet<>(follows.leftOut());
            left.remove(chosen.blockId());
            return piece.withTop(new Top.FollowsStart(left));
        }
        return piece;
    }

    /** Moves a block up the warp or, with a negative number, down; as far as it goes. */
    public static Edit move(String name, Chosen chosen, int up) {
        return new Edit(name, state -> {
            End end = state.piece().end(chosen.place());
            Block block = end.block(chosen.blockId()).orElseThrow();
            End without = end.without(Set.of(chosen.blockId()));
            int to = Math.max(
                    0,
                    Math.min(
                            end.indexOf(chosen.blockId()) + up, without.blocks().size()));
            return new State(state.piece().withEnd(chosen.place(), without.with(to, block)), Optional.of(chosen));
        });
    }

    /** Puts another block in the place of the one with its id. */
    public static Edit replace(String name, Place place, Block block) {
        return new Edit(
                name,
                state -> new State(
                        state.piece().withEnd(place, state.piece().end(place).replaced(block)), state.chosen()));
    }

    /** Leaves a block of the start out at a top that follows it, or brings it back. */
    public static Edit leaveOut(String name, String blockId, boolean out) {
        return piece(name, piece -> {
            if (!(piece.top() instanceof Top.FollowsStart follows)) {
                return piece;
            }
            Set<String> left = new HashSet<>(follows.leftOut());
            if (out) {
                left.add(blockId);
            } else {
                left.remove(blockId);
            }
            return piece.withTop(new Top.FollowsStart(left));
        });
    }

    /** Makes the top a stack of its own, as it is now. */
    public static Edit topOnItsOwn(String name) {
        return piece(name, piece -> piece.withTop(new Top.OnItsOwn(piece.end(Place.TOP))));
    }

    /** Makes the top follow the start; blocks of the start that the top lacks are left out. */
    public static Edit topFollows(String name) {
        return piece(name, piece -> {
            List<String> there =
                    piece.end(Place.TOP).blocks().stream().map(Block::id).toList();
            Set<String> left = new HashSet<>();
            for (Block block : piece.start().blocks()) {
                if (!there.contains(block.id())) {
                    left.add(block.id());
                }
            }
            return piece.withTop(new Top.FollowsStart(left));
        });
    }
}
