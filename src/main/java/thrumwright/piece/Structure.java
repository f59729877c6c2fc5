package thrumwright.piece;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thrumwright.block.Block;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.TakesYarn;

/**
 * A way to begin a piece: a stack of blocks for any piece's start.
 *
 * @param id unique among the structures
 * @param use when to use it
 * @param needs what it asks for: free warp, posts, a bar
 * @param difficulty how much it asks of the hands, if somebody said so
 * @param goodFor what weavers look for when this is the answer, such as “no fringe” or “hang from a bar”
 * @param source where it comes from, or “common practice, no source”
 */
public record Structure(
        String id,
        String name,
        String use,
        String needs,
        Optional<Difficulty> difficulty,
        List<String> goodFor,
        String source,
        End end) {
    /** What a text says that there isn't: “no fringe”, “without hem or fringe”. */
    private static final Pattern WITHOUT = Pattern.compile("\\b(?:no|without)(?: \\p{L}+)(?: or \\p{L}+)*");

    /** The same in what somebody looks for. */
    private static final Pattern NONE = Pattern.compile("\\b(?:no|without) \\p{L}+");

    public Structure {
        Objects.requireNonNull(name);
        Objects.requireNonNull(use);
        Objects.requireNonNull(needs);
        Objects.requireNonNull(difficulty);
        goodFor = List.copyOf(goodFor);
        Objects.requireNonNull(source);
        Objects.requireNonNull(end);
        if (!id.matches("[a-z0-9-]{1,60}")) {
            throw new IllegalArgumentException("A structure's id is made of small letters, digits and hyphens.");
        }
    }

    /**
     * Whether it answers to every word of what somebody looks for: a word of its name, of what it is good for, when to use it
     * or what it needs begins so. “No fringe” answers to “no fringe” but not to “fringe”. Upper and lower case are alike.
     */
    public boolean answers(String sought) {
        String all = String.join(" . ", name, use, needs, String.join(" . ", goodFor))
                .toLowerCase(Locale.ROOT)
                .replace('’', '\'');
        String positive = WITHOUT.matcher(all).replaceAll(" ");
        String asked = sought.toLowerCase(Locale.ROOT).replace('’', '\'');
        boolean lacks = NONE.matcher(asked).results().allMatch(none -> begins(all, none.group()));
        return lacks
                && Stream.of(NONE.matcher(asked).replaceAll(" ").strip().split("[\\s,;]+"))
                        .allMatch(word -> begins(positive, word));
    }

    private static boolean begins(String text, String word) {
        return Pattern.compile("(?<![\\p{L}\\d])" + Pattern.quote(word))
                .matcher(text)
                .find();
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
        return new Structure(other, name, use, needs, difficulty, goodFor, source, end);
    }

    /** Its stack for a piece; a yarn that the piece doesn't have gives way to the weft. */
    public End fittedTo(Piece piece) {
        return end.map(block -> fitted(block, piece));
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

    private static Block fitted(Block block, Piece piece) {
        boolean foreign = block instanceof TakesYarn yarn
                && yarn.use().material() instanceof Material.Own own
                && piece.yarns().stream().noneMatch(known -> known.id().equals(own.yarnId()));
        if (!foreign) {
            return block;
        }
        TakesYarn yarn = (TakesYarn) block;
        return yarn.withUse(yarn.use().with(new Material.Part(MaterialRole.WEFT)));
    }
}
