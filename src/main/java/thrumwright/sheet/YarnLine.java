package thrumwright.sheet;

import thrumwright.yarn.Yarn;

/**
 * What one yarn comes to in the warp and both ends.
 *
 * @param uses for what it is taken
 * @param buy how much to buy, in words
 */
public record YarnLine(Yarn yarn, String uses, String length, String mass, String buy) {}
