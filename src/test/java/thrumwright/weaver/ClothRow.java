package thrumwright.weaver;

import java.util.List;
import thrumwright.block.Side;

/**
 * One row of a block.
 *
 * @param from the side at which it begins
 * @param yarns each yarn's way past the warp ends, such as {@code +0 -1 +2}: in front of the left edge end, behind its
 *     neighbour
 * @param comesUp where yarn comes to the front, whether below or above what lies there, in the order of working; empty
 *     where it makes no difference
 */
record ClothRow(Side from, List<Passes> yarns, List<ComesUp> comesUp) {
    ClothRow {
        yarns = List.copyOf(yarns);
        comesUp = List.copyOf(comesUp);
    }

    enum ComesUp {
        BELOW,
        ABOVE
    }
}
