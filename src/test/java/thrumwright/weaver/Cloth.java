package thrumwright.weaver;

import java.util.List;
import thrumwright.block.Side;

/**
 * What a block comes to in the warp, whoever made it: every row's crossings and where its tails are.
 *
 * @param tails in the order in which they come about
 */
record Cloth(List<ClothRow> rows, List<Tail> tails) {
    Cloth {
        rows = List.copyOf(rows);
        tails = List.copyOf(tails);
    }

    /** Whether it is woven with the yarn of the block before. */
    boolean goesOn() {
        return tails.stream().anyMatch(tail -> tail.kept() == Kept.FROM_BEFORE);
    }

    /** Whether the yarn comes round the edge end to its other face, from where the block before left it. */
    boolean holdsAfter(Cloth before) {
        Passes last = before.rows().get(before.rows().size() - 1).yarns().get(0);
        Passes next = rows.get(0).yarns().get(0);
        return !last.last().equals(next.first()) || next.goesRoundFirst();
    }

    /** How a yarn's end is left. */
    enum Kept {
        HANGING,
        /** What the block before left hanging goes on in this one. */
        FROM_BEFORE,
        /** It isn’t cut: the next block goes on with it. */
        GOES_ON,
        TIED_TO_A_POST,
        TIED_ROUND_THE_EDGE_END
    }

    record Tail(Side side, Kept kept) {}
}
