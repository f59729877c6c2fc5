package thrumwright.piece;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import thrumwright.measure.Refused;

/**
 * A way to begin a piece: a stack of blocks for any piece's start.
 *
 * @param id unique among the structures
 * @param use when to use it
 * @param needs what it asks for: free warp, posts, a bar
 * @param difficulty how much it asks of the hands, if somebody said so
 * @param withoutPosts whether it is meant for a loom that has no posts beside the warp
 * @param goodFor what weavers look for when this is the answer, such as “no fringe” or “hang from a bar”
 * @param source where it comes from, or “common practice, no source”
 */
public record Structure(
        String id,
        String name,
        String use,
        String needs,
        Optional<Difficulty> difficulty,
        boolean withoutPosts,
        List<String> goodFor,
        String source,
        End end) {
    public Structure {
        Objects.requireNonNull(name);
        Objects.requireNonNull(use);
        Objects.requireNonNull(needs);
        Objects.requireNonNull(difficulty);
        goodFor = List.copyOf(goodFor);
        Objects.requireNonNull(source);
        Objects.requireNonNull(end);
        if (!id.matches("[a-z0-9-]{1,60}")) {
            throw new Refused("structure.id", Map.of());
        }
    }

    /**
     * Whether it answers to every word of what somebody looks for: its name, what it is good for, when to use it, what it needs,
     * how hard it is and what its stack shows. The beginning of a word is enough; “no fringe” answers to “no fringe” and not to
     * “fringe”.
     *
     * @param language in which somebody looks, and structures are described
     */
    public boolean answers(String sought, SearchWords language) {
        return Sought.of(sought, language).answeredBy(this);
    }

    /** An id made from a name: small letters and digits, hyphens between them. */
    public static String idFrom(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+|['’]", "")
                .replaceAll("[^a-z0-9]+", "-");
        String cut = (plain.length() > 50 ? plain.substring(0, 50) : plain).replaceAll("^-|-$", "");
        return cut.isEmpty() ? "structure" : cut;
    }

    public Structure withId(String other) {
        return new Structure(other, name, use, needs, difficulty, withoutPosts, goodFor, source, end);
    }

    /** Its stack for a piece; a yarn that the piece doesn't have gives way to the weft. */
    public End fittedTo(Piece piece) {
        return end.map(piece::fitted);
    }

    /**
     * A piece with this structure for one of its ends. A top that follows the start keeps following it, without its ordering
     * cords and without what was left out of it before; put at the top it is turned over, without its ordering cords, which
     * are needed at the start only.
     */
    public Piece on(Piece piece, Place place) {
        End stack = fittedTo(piece);
        Set<String> cords = Top.FollowsStart.withoutOrderingCords(stack).leftOut();
        if (place == Place.TOP) {
            return piece.withTop(
                    new Top.OnItsOwn(stack.without(cords).mirrored().unforced()));
        }
        Piece with = piece.withStart(stack);
        if (!(piece.top() instanceof Top.FollowsStart follows)) {
            return with;
        }
        Set<String> leftOut = new HashSet<>(follows.leftOut());
        leftOut.removeIf(id -> stack.block(id).isEmpty());
        leftOut.addAll(cords);
        return with.withTop(new Top.FollowsStart(leftOut));
    }
}
