package thrumwright.piece;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.block.Posts;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * The loom on which the piece is woven.
 *
 * @param name what the weavers call it
 * @param kind how it holds the warp
 * @param open clear height of one face between the lower and the upper bar
 * @param uprights its posts beside the warp; empty on a loom without any
 * @param clearance from the lower bar to where the weaving begins; empty: as is usual for kind and finish
 * @param workingRoom open warp that the hands need at the top to finish; empty: as is usual for kind and finish
 * @param warpPerEnd how much warp yarn one end takes on this loom, with what is lost; empty: as its kind has it
 * @param sheds how its sheds are made
 */
public record Loom(
        String name,
        LoomKind kind,
        Length open,
        Optional<Uprights> uprights,
        Optional<Length> clearance,
        Optional<Length> workingRoom,
        Optional<Length> warpPerEnd,
        Sheds sheds) {
    /**
     * Upright posts.
     *
     * @param diameter thickness of a post
     * @param gap clear space from the outermost warp end to the post
     */
    public record Uprights(Length diameter, Length gap) {
        public Uprights {
            if (gap.mm() > 2000) {
                throw new BadMeasure("posts.gap", Map.of("gap", gap));
            }
            if (!(diameter.mm() > 0 && diameter.mm() <= 500)) {
                throw new BadMeasure("posts.diameter", Map.of("diameter", diameter));
            }
        }

        public Posts posts() {
            return new Posts(diameter.mm(), gap.mm());
        }
    }

    public Loom {
        Objects.requireNonNull(name);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(uprights);
        Objects.requireNonNull(sheds);
        checkFree(clearance, "loom.clearance");
        checkFree(workingRoom, "loom.working-room");
        if (!(open.mm() >= 10 && open.mm() <= 20_000)) {
            throw new BadMeasure("loom.open", Map.of("open", open));
        }
        if (warpPerEnd.isPresent()) {
            checkEnd(warpPerEnd.get(), kind, open);
        }
    }

    /** A loom from bar to bar, with all its lengths. */
    public Loom(
            String name,
            Length open,
            Optional<Uprights> uprights,
            Length clearance,
            Length workingRoom,
            Length warpPerEnd) {
        this(
                name,
                new LoomKind.BarToBar(),
                open,
                uprights,
                Optional.of(clearance),
                Optional.of(workingRoom),
                Optional.of(warpPerEnd),
                Sheds.FINGERS);
    }

    private static void checkEnd(Length end, LoomKind kind, Length open) {
        if (!(end.mm() > 0 && end.mm() <= 100_000)) {
            throw new BadMeasure("loom.warp-per-end", Map.of("length", end));
        }
        if (end.mm() < kind.leastEnd(open)) {
            String key = kind.goesRound() ? "loom.way-round" : "loom.all-lost";
            throw new BadMeasure(key, Map.of("length", end, "open", open));
        }
    }

    private static void checkFree(Optional<Length> free, String key) {
        if (free.isPresent() && free.get().mm() > 20_000) {
            throw new BadMeasure(key, Map.of("free", free.get()));
        }
    }

    public Optional<Posts> posts() {
        return uprights.map(Uprights::posts);
    }

    public Loom withName(String other) {
        return new Loom(other, kind, open, uprights, clearance, workingRoom, warpPerEnd, sheds);
    }

    /** Held in another way; a length of the warp that can't be on it is forgotten. */
    public Loom withKind(LoomKind other) {
        Optional<Length> kept = warpPerEnd.filter(end -> end.mm() >= other.leastEnd(open));
        return new Loom(name, other, open, uprights, clearance, workingRoom, kept, sheds);
    }

    public Loom withOpen(Length other) {
        return new Loom(name, kind, other, uprights, clearance, workingRoom, warpPerEnd, sheds);
    }

    /** Whether no length is said of what it leaves free. */
    public boolean leavesAsUsual() {
        return clearance.isEmpty() && workingRoom.isEmpty() && warpPerEnd.isEmpty();
    }

    /** The same with nothing said of what it leaves free. */
    public Loom leavingAsUsual() {
        return new Loom(name, kind, open, uprights, Optional.empty(), Optional.empty(), Optional.empty(), sheds);
    }

    public Loom withUprights(Optional<Uprights> other) {
        return new Loom(name, kind, open, other, clearance, workingRoom, warpPerEnd, sheds);
    }

    public Loom withClearance(Optional<Length> other) {
        return new Loom(name, kind, open, uprights, other, workingRoom, warpPerEnd, sheds);
    }

    public Loom withWorkingRoom(Optional<Length> other) {
        return new Loom(name, kind, open, uprights, clearance, other, warpPerEnd, sheds);
    }

    public Loom withWarpPerEnd(Optional<Length> other) {
        return new Loom(name, kind, open, uprights, clearance, workingRoom, other, sheds);
    }

    public Loom withSheds(Sheds other) {
        return new Loom(name, kind, open, uprights, clearance, workingRoom, warpPerEnd, other);
    }
}
