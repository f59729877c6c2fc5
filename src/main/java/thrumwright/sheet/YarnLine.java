package thrumwright.sheet;

import java.util.Optional;
import thrumwright.yarn.Yarn;

/**
 * What one yarn comes to in the warp and both ends, or a band that hems are faced with.
 *
 * @param yarn empty for a band
 * @param what it is
 * @param uses for what it is taken
 * @param buy how much to buy, in words; may be empty
 */
public record YarnLine(Optional<Yarn> yarn, String what, String uses, String length, String mass, String buy) {
    /** All of it in words. */
    public String text() {
        String text = what + ": " + length + ", " + mass + " (" + uses + ").";
        return buy.isEmpty() ? text : text + " " + buy;
    }
}
