package thrumwright.sheet;

import java.util.Optional;
import thrumwright.block.Side;

/**
 * One row of a step, or several that go on alike.
 *
 * @param label its number, or “3–40”
 * @param count how many rows that is, 1 or more
 * @param from the side at which it begins; empty for several rows
 * @param text shed or lean, in a few words
 * @param brief the same in one or two words, for large type
 */
public record RowLine(String label, int count, Optional<Side> from, String text, String brief) {
    /** An arrow the way the row runs, or both ways. */
    public String arrow() {
        return from.map(side -> side == Side.LEFT ? "→" : "←").orElse("↔");
    }
}
