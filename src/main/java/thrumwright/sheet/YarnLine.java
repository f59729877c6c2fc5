package thrumwright.sheet;

import thrumwright.yarn.Yarn;

/**
 * What one yarn comes to in the warp and both ends.
 *
 * @param uses for what it is taken
 * @param buy how much to buy, in words; may be empty
 */
public record YarnLine(Yarn yarn, String uses, String length, String mass, String buy) {
    /** All of it in words. */
    public String text() {
        String text = yarn.name() + ": " + length + ", " + mass + " (" + uses + ").";
        return buy.isEmpty() ? text : text + " " + buy;
    }
}
