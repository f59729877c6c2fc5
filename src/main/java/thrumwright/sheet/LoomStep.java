package thrumwright.sheet;

import java.util.List;

/**
 * A step as it is worked at the loom.
 *
 * @param rows each of its rows by itself; empty for a step that has none and is done as a whole
 */
public record LoomStep(Step step, List<LoomRow> rows) {
    /**
     * One row.
     *
     * @param counted “pick 3 of 6”
     */
    public record LoomRow(String counted, RowLine line) {}

    public LoomStep {
        rows = List.copyOf(rows);
    }

    /** How many ticks it takes, 1 or more. */
    public int count() {
        return Math.max(1, rows.size());
    }
}
