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
 * @param open clear height of one face between the lower and the upper bar
 * @param uprights its posts beside the warp; empty on a loom without any
 * @param clearance from the lower bar to where the weaving begins
 * @param workingRoom open warp that the hands need at the top to finish
 * @param warpPerEnd how much warp yarn one end takes on this loom, with what is lost
 */
public record Loom(
        String name,
        Length open,
        Optional<Uprights> uprights,
        Length clearance,
        Length workingRoom,
        Length warpPerEnd) {
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
        Objects.requireNonNull(uprights);
        checkFree(clearance, "loom.clearance");
        checkFree(workingRoom, "loom.working-room");
        if (!(open.mm() >= 10 && open.mm() <= 20_000)) {
            throw new BadMeasure("loom.open", Map.of("open", open));
        }
        if (!(warpPerEnd.mm() > 0 && warpPerEnd.mm() <= 100_000)) {
            throw new BadMeasure("loom.warp-per-end", Map.of("length", warpPerEnd));
        }
    }

    private static void checkFree(Length free, String key) {
        if (free.mm() > 20_000) {
            throw new BadMeasure(key, Map.of("free", free));
        }
    }

    public Optional<Posts> posts() {
        return uprights.map(Uprights::posts);
    }

    public Loom withName(String other) {
        return new Loom(other, open, uprights, clearance, workingRoom, warpPerEnd);
    }

    public Loom withOpen(Length other) {
        return new Loom(name, other, uprights, clearance, workingRoom, warpPerEnd);
    }

    public Loom withUprights(Optional<Uprights> other) {
        return new Loom(name, open, other, clearance, workingRoom, warpPerEnd);
    }

    public Loom withClearance(Length other) {
        return new Loom(name, open, uprights, other, workingRoom, warpPerEnd);
    }

    public Loom withWorkingRoom(Length other) {
        return new Loom(name, open, uprights, clearance, other, warpPerEnd);
    }

    public Loom withWarpPerEnd(Length other) {
        return new Loom(name, open, uprights, clearance, workingRoom, other);
    }
}
