package thrumwright.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.measure.BadMeasure;
import thrumwright.yarn.Yarn;

/**
 * A piece that a class weaves, each weaver on a loom of their own. Immutable; the piece can be woven on every one of its
 * looms.
 *
 * @param title what the teacher calls the class
 * @param piece what is woven
 * @param yarns those that some members take and the piece doesn't know
 * @param members one to {@link #MOST_MEMBERS}, in the order in which to list them
 */
public record ClassSet(String title, Piece piece, List<Yarn> yarns, List<ClassMember> members) {
    /** The most looms of a class. */
    public static final int MOST_MEMBERS = 200;

    /** The most blocks on all looms together: nobody reads the lists of more. */
    public static final int MOST_BLOCKS = 3_000;

    /** @throws IllegalArgumentException if the piece can't be woven on one of the looms; the message is for the user */
    public ClassSet {
        Objects.requireNonNull(title);
        yarns = List.copyOf(yarns);
        members = List.copyOf(members);
        if (title.length() > ClassMember.LONGEST_NAME) {
            throw new BadMeasure("class.title", Map.of("most", ClassMember.LONGEST_NAME, "count", title.length()));
        }
        if (members.isEmpty() || members.size() > MOST_MEMBERS) {
            throw new BadMeasure("class.members", Map.of("most", MOST_MEMBERS, "count", members.size()));
        }
        checkBlocks(piece.countBlocks(), members.size());
        Piece whole = together(piece, yarns);
        members.forEach(member -> member.on(whole));
    }

    private static void checkBlocks(int each, int looms) {
        if (each * looms > MOST_BLOCKS) {
            throw new BadMeasure("class.blocks", Map.of("most", MOST_BLOCKS, "count", each * looms, "looms", looms));
        }
    }

    /** Whether there can be another loom. */
    public boolean takesMore() {
        int more = members.size() + 1;
        return more <= MOST_MEMBERS && piece.countBlocks() * more <= MOST_BLOCKS;
    }

    /** The piece with all yarns of the class. */
    public Piece withAllYarns() {
        return together(piece, yarns);
    }

    /**
     * A piece that has more yarns.
     *
     * @throws IllegalArgumentException if two yarns have the same id; the message is for the user
     */
    public static Piece together(Piece piece, List<Yarn> more) {
        return piece.withYarns(
                Stream.concat(piece.yarns().stream(), more.stream()).toList());
    }

    /**
     * The piece as each member weaves it, in their order. What there is of a yarn is the class's, so these pieces know of
     * no stock. What was woven of the piece itself is no member's.
     */
    public List<Piece> pieces() {
        Piece whole = withAllYarns().withTicks(Ticks.NONE).withMeasures(Measures.NONE);
        Piece without = whole.withYarns(whole.yarns().stream()
                .map(yarn -> yarn.withStock(Optional.empty()))
                .toList());
        return members.stream().map(member -> member.on(without)).toList();
    }

    public ClassSet withTitle(String other) {
        return new ClassSet(other, piece, yarns, members);
    }

    public ClassSet withPiece(Piece other) {
        return new ClassSet(title, other, yarns, members);
    }

    public ClassSet withMembers(List<ClassMember> other) {
        return new ClassSet(title, piece, yarns, other);
    }

    /** @param index of the member whose place the other takes */
    public ClassSet with(int index, ClassMember other) {
        List<ClassMember> changed = new ArrayList<>(members);
        changed.set(index, other);
        return withMembers(changed);
    }

    /** @param index where the member will stand */
    public ClassSet withMore(int index, ClassMember member) {
        List<ClassMember> more = new ArrayList<>(members);
        more.add(index, member);
        return withMembers(more);
    }

    public ClassSet without(int index) {
        List<ClassMember> fewer = new ArrayList<>(members);
        fewer.remove(index);
        return withMembers(fewer);
    }
}
