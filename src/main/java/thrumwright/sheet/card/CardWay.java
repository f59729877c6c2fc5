package thrumwright.sheet.card;

import thrumwright.block.Side;

/**
 * How one row is worked, in two or three words.
 *
 * @param from the side at which it begins
 * @param brief “over”, “/ above” or “hitch”: what stands beside the arrow
 * @param says the same as a sentence, for those who hear it
 */
public record CardWay(Side from, String brief, String says) {
    /** An arrow the way the row runs. */
    public String arrow() {
        return from == Side.LEFT ? "→" : "←";
    }
}
