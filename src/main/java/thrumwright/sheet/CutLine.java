package thrumwright.sheet;

import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/**
 * A line of the cut list.
 *
 * @param role the part that the yarn plays; empty for a yarn of the block's own
 * @param use what it is for
 * @param step the number of the step that takes it
 * @param count how many pieces of {@code length} to cut
 * @param length to cut, in the weaver's units
 * @param widths the same as a number of reference widths, in halves
 * @param shared said where one yarn is shared into several butterflies; else empty
 */
public record CutLine(
        Place place,
        String blockId,
        Yarn yarn,
        String role,
        String use,
        int step,
        int count,
        String length,
        String widths,
        String shared) {
    /** The yarn's name and the part it plays. */
    public String yarnAndRole() {
        return role.isEmpty() ? yarn.name() : yarn.name() + ", " + role;
    }
}
