package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A step as it is worked at the loom.
 *
 * @param part of the work that it belongs to
 * @param opening what to know before it, where a part of the work begins with it
 * @param cuts what to cut for it
 * @param rows each of its rows by itself; empty for a step that has none and is done as a whole
 * @param reach the height to reach, in a few words; empty if none
 */
public record LoomStep(
        Step step, String part, List<String> opening, List<String> cuts, List<LoomRow> rows, String reach) {
    /**
     * One row.
     *
     * @param counted “pick 3 of 6”
     */
    public record LoomRow(String counted, RowLine line) {
        /** The way it runs and how it is worked. */
        public String said() {
            return line.arrow() + " " + line.text();
        }
    }

    public LoomStep {
        opening = List.copyOf(opening);
        cuts = List.copyOf(cuts);
        rows = List.copyOf(rows);
    }

    /** How many ticks it takes, 1 or more. */
    public int count() {
        return Math.max(1, rows.size());
    }

    /** Its number and its name. */
    public String title() {
        return step.number() + "  " + step.title();
    }

    /** All that is to be read before its first row, in order. */
    public List<String> told() {
        List<String> told = new ArrayList<>(opening);
        told.addAll(step.sentences());
        told.addAll(step.cautions());
        return told;
    }
}
