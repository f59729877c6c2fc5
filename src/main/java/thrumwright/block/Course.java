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

    /** After those rows. */
    public Course after(List<Row> rows) {
        if (rows.isEmpty()) {
            return this;
        }
        Optional<Shed> shed = lastShed;
        for (Row row : rows) {
            if (row.shed().isPresent()) {
                shed = row.shed();
            }
        }
        return new Course(shed, rows.get(rows.size() - 1).to());
    }
}
