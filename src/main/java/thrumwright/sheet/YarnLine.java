package thrumwright.sheet;

import thrumwright.yarn.Yarn;

/**
 * What one yarn comes to in the warp and both ends.
 *
 * @param uses for what it is taken
 */
public record YarnLine(Yarn yarn, String uses, String length, String mass) {}
