package thrumwright.block;

import java.util.List;
import java.util.Optional;

/**
 * How far the weaving has come: what the next row goes on from.
 *
 * @param lastShed the last plain pick's shed; empty before the first
 * @param side where the last row ended, so that the next begins there
 */
public record Course(Optional<Shed> lastShed, Side side) {
    /** Before the first row of a piece: from the left, over the left edge end. */
    public static Course beginning() {
        return new Course(Optional.empty(), Side.LEFT);
    }

    /** The shed that keeps picks alternating. */
    public Shed nextShed() {
        return lastShed.map(Shed::other).orElse(Shed.OVER_FIRST);
    }

    /**
     * After those rows.
     *
     * @param rows of one block: all in sheds, or none
     */
    public Course after(List<Row> rows) {
        if (rows.isEmpty()) {
            return this;
        }
        Row last = rows.get(rows.size() - 1);
        return new Course(last.shed().or(() -> lastShed), last.to());
    }
}
