package thrumwright.editor.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import thrumwright.block.Block;
import thrumwright.measure.Phrases;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.piece.Top;
import thrumwright.plan.words.Words;

/**
 * All edits that a weaver can make, with their names.
 *
 * @param phrases with the names under {@code edit.…}
 */
public record Edits(Phrases phrases, Words words) {
    /** So many blocks are named one by one. */
    private static final int MOST_NAMED = 4;

    /** A field's new value. */
    public Edit field(String label, String thing, UnaryOperator<Piece> change) {
        String key = thing.isBlank() ? "edit.field" : "edit.field.of";
        return Edit.of(phrases.say(key, Map.of("field", label, "thing", thing)), change);
    }

    /** A block with the id of the one whose place it takes. */
    public Edit amount(Place place, Block changed) {
        return Edit.of(named("edit.amount", changed), piece -> replaced(piece, place, changed));
    }

    /** The same, told from what to what. */
    public Edit amount(Place place, Block before, Block changed) {
        Map<String, ?> fromTo =
                Map.of("block", words.name(changed), "was", Amounts.text(before), "is", Amounts.text(changed));
        return Edit.of(
                phrases.say("edit.amount.from-to", fromTo),
                amount(place, changed).change());
    }

    /** The same piece with a changed block; a following top keeps following. */
    public Piece replaced(Piece piece, Place place, Block changed) {
        checkOwn(piece, place);
        return piece.withEnd(place, piece.end(place).replaced(changed));
    }

    /** @param slot of a top that follows the start: the block goes into the start so that it stands there */
    public Edit add(Piece now, Slot slot, Block prototype) {
        Slot own = slot.own(now);
        Place place = own.place();
        int index = own.below();
        Block begun = place == Place.TOP ? prototype.begunAtTop() : prototype;
        Block added = fitted(begun, now, now.end(place), prototype.id());
        return Edit.of(named("edit.add", added), piece -> {
                    checkOwn(piece, place);
                    checkRoom(piece, place, 1);
                    Piece with = piece.withEnd(place, piece.end(place).with(index, added));
                    return place == Place.START && added.startOnly() ? leaving(with, added.id(), true) : with;
                })
                .selecting(Selection.of(place, added.id()));
    }

    /**
     * Puts copies of blocks in, one above the other.
     *
     * @param slot of a top that follows the start: the blocks go into the start turned over, so that they stand there as they
     *     are
     */
    public Edit paste(Piece now, Slot slot, List<Block> copied, String key) {
        Slot own = slot.own(now);
        Place place = own.place();
        List<Block> blocks =
                place == slot.place() ? copied : new End(copied).mirrored().blocks();
        End end = now.end(place);
        List<Block> added = new ArrayList<>();
        for (Block block : blocks) {
            Block fitted = fitted(block, now, end, block.id());
            added.add(fitted);
            end = end.blocks().size() < End.MOST_BLOCKS ? end.with(end.blocks().size(), fitted) : end;
        }
        return Edit.of(manyNamed(key, added), piece -> {
                    checkOwn(piece, place);
                    checkRoom(piece, place, added.size());
                    List<Block> all = new ArrayList<>(piece.end(place).blocks());
                    all.addAll(own.below(), added);
                    return piece.withEnd(place, new End(all));
                })
                .selecting(new Selection(place, added.stream().map(Block::id).toList()));
    }

    /** With an id that the end doesn't have, and with a yarn that the piece has. */
    private static Block fitted(Block block, Piece piece, End end, String stem) {
        return piece.fitted(block.withTag(block.tag().withId(end.freeId(stem.replaceFirst("-\\d+$", "")))));
    }

    /** Takes blocks away; of a top that follows the start they are left out. */
    public Edit delete(Piece now, Selection gone) {
        List<Block> blocks = gone.blocksIn(now);
        if (gone.place() == Place.TOP && now.topFollows()) {
            return Edit.of(manyNamed("edit.leave-out", blocks), piece -> {
                Piece without = piece;
                for (String id : gone.ids()) {
                    without = leaving(without, id, true);
                }
                return without;
            });
        }
        return Edit.of(
                        manyNamed("edit.delete", blocks),
                        piece -> pruned(piece.withEnd(
                                gone.place(), piece.end(gone.place()).without(gone.ids()))))
                .selecting(neighbour(now, gone));
    }

    /** What comes after blocks that go: the one above them, else the highest of the others. */
    private static Selection neighbour(Piece now, Selection gone) {
        Selection below = Selection.none();
        boolean met = false;
        for (Block block : now.end(gone.place()).blocks()) {
            if (gone.ids().contains(block.id())) {
                met = true;
            } else if (met) {
                return Selection.of(gone.place(), block.id());
            } else {
                below = Selection.of(gone.place(), block.id());
            }
        }
        return below;
    }

    /** What is left out of the top, without what is no longer there. */
    private static Piece pruned(Piece piece) {
        if (!(piece.top() instanceof Top.FollowsStart follows)) {
            return piece;
        }
        Set<String> left = new HashSet<>(follows.leftOut());
        left.removeIf(id -> piece.start().block(id).isEmpty());
        return piece.withTop(new Top.FollowsStart(left));
    }

    /** Moves blocks up (1) or down (−1) by one place, as far as they can go. */
    public Edit move(Piece now, Selection moved, int by) {
        return Edit.of(manyNamed(by > 0 ? "edit.up" : "edit.down", moved.blocksIn(now)), piece -> {
            checkOwn(piece, moved.place());
            checkMoves(moved.blocksIn(piece));
            // a finish at the edge is no step on the way: it goes back to the edge, whatever that is then
            List<Block> all = new ArrayList<>(piece.end(moved.place()).blocks());
            List<Block> finishes =
                    all.stream().filter(block -> block.finish().isPresent()).toList();
            all.removeAll(finishes);
            int from = by > 0 ? all.size() - 1 : 0;
            for (int i = from; i >= 0 && i < all.size(); i -= by) {
                int to = i + by;
                boolean free = to >= 0
                        && to < all.size()
                        && !moved.ids().contains(all.get(to).id());
                if (moved.ids().contains(all.get(i).id()) && free) {
                    all.add(to, all.remove(i));
                }
            }
            all.addAll(finishes);
            return piece.withEnd(moved.place(), new End(all));
        });
    }

    /**
     * Moves blocks to another place, in their end or the other one.
     *
     * @param slot counted without the blocks that move
     */
    public Edit moveTo(Piece now, Selection moved, Slot slot) {
        return slot.place() == moved.place() ? moveWithin(now, moved, slot.below()) : moveAcross(now, moved, slot);
    }

    private Edit moveWithin(Piece now, Selection moved, int below) {
        List<Block> blocks = moved.blocksIn(now);
        return Edit.of(manyNamed("edit.move", blocks), piece -> {
            checkOwn(piece, moved.place());
            checkMoves(blocks);
            List<Block> all = new ArrayList<>(
                    piece.end(moved.place()).without(moved.ids()).blocks());
            all.addAll(Math.max(0, Math.min(below, all.size())), moved.blocksIn(piece));
            return piece.withEnd(moved.place(), new End(all));
        });
    }

    private Edit moveAcross(Piece now, Selection moved, Slot slot) {
        Edit put = paste(now, slot, moved.blocksIn(now), "edit.move." + key(slot.place()));
        return new Edit(
                put.name(),
                piece -> {
                    checkOwn(piece, moved.place());
                    checkOwn(piece, slot.place());
                    Piece with = put.change().apply(piece);
                    return with.withEnd(moved.place(), with.end(moved.place()).without(moved.ids()));
                },
                put.selects());
    }

    private static String key(Place place) {
        return place.name().toLowerCase(Locale.ROOT);
    }

    /** Whether the start's block of that id is left out of a top that follows it. */
    public Edit leaveOut(Piece now, String id, boolean out) {
        Block block = now.start().block(id).orElseThrow();
        return Edit.of(named(out ? "edit.leave-out" : "edit.put-back", block), piece -> leaving(piece, id, out));
    }

    private static Piece leaving(Piece piece, String id, boolean out) {
        if (!(piece.top() instanceof Top.FollowsStart follows)) {
            return piece;
        }
        Set<String> left = new HashSet<>(follows.leftOut());
        if (out) {
            left.add(id);
        } else {
            left.remove(id);
        }
        return piece.withTop(new Top.FollowsStart(left));
    }

    /** From now on the top is a stack of its own, to begin with the one that it is now. */
    public Edit topOnItsOwn() {
        return Edit.of(
                phrases.say("edit.top-own"),
                piece -> piece.topFollows() ? piece.withTop(new Top.OnItsOwn(piece.end(Place.TOP))) : piece);
    }

    /** From now on the top is the start reflected; the name says what it loses and gets back by that. */
    public Edit topFollows(Piece now) {
        String lost = lostByFollowing(now);
        String regained = regainedByFollowing(now);
        String name = phrases.say("edit.top-follows")
                + (lost.isEmpty() ? "" : phrases.say("edit.top-follows.losing", Map.of("lost", lost)))
                + (regained.isEmpty() ? "" : phrases.say("edit.top-follows.regaining", Map.of("regained", regained)));
        return Edit.of(name, piece -> TopChange.following(piece).after());
    }

    /** What a top of its own gives up when it follows the start again; empty if that is nothing. */
    public String lostByFollowing(Piece now) {
        TopChange change = TopChange.following(now);
        List<String> lost = some(change.lost());
        if (change.orderLost()) {
            lost.add(phrases.say("edit.top-follows.order"));
        }
        return String.join(", ", lost);
    }

    /** Which blocks of the start a top of its own gets back when it follows the start again; empty if it has them. */
    public String regainedByFollowing(Piece now) {
        return String.join(", ", some(TopChange.following(now).regained()));
    }

    /** Their names, or how many they are. */
    private List<String> some(List<Block> blocks) {
        return new ArrayList<>(
                blocks.size() > MOST_NAMED
                        ? List.of(phrases.say("edit.blocks", Map.of("count", blocks.size())))
                        : blocks.stream().map(words::name).toList());
    }

    /** Another stack in the place of the whole start, or of a top of its own. */
    public Edit structure(Structure structure, Place place) {
        return Edit.of(
                phrases.say("edit.structure", Map.of("structure", structure.name(), "place", words.place(place))),
                piece -> structure.on(piece, place));
    }

    private void checkRoom(Piece piece, Place place, int more) {
        if (piece.end(place).blocks().size() + more > End.MOST_BLOCKS) {
            throw new IllegalArgumentException(phrases.say("edit.refused.full", Map.of("most", End.MOST_BLOCKS)));
        }
    }

    /** The piece keeps its finishes at the edge. */
    private void checkMoves(List<Block> moved) {
        if (!moved.isEmpty() && moved.stream().allMatch(block -> block.finish().isPresent())) {
            throw new IllegalArgumentException(
                    phrases.say("edit.refused.edge", Map.of("block", words.name(moved.get(0)))));
        }
    }

    private void checkOwn(Piece piece, Place place) {
        if (place == Place.TOP && piece.topFollows()) {
            throw new IllegalArgumentException(phrases.say("edit.refused.follows"));
        }
    }

    private String named(String key, Block block) {
        return phrases.say(key, Map.of("block", words.name(block)));
    }

    private String manyNamed(String key, Collection<Block> blocks) {
        Optional<Block> one = blocks.stream().findFirst();
        String what = blocks.size() == 1
                ? words.name(one.orElseThrow())
                : phrases.say("edit.blocks", Map.of("count", blocks.size()));
        return phrases.say(key, Map.of("block", what));
    }
}
