package thrumwright.sheet;

import java.util.Optional;
import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/**
 * A line of the cut list.
 *
 * @param blockId that takes it; empty for what is sewn to the finished piece
 * @param yarn to cut; empty for a band of cloth
 * @param what to cut, in words
 * @param strands of which each length consists, in words; empty if it is a yarn by itself
 * @param role the part that the yarn plays; empty for a yarn of the block's own
 * @param use what it is for
 * @param step the number of the step that takes it
 * @param count how many pieces of {@code length} to cut
 * @param mm to cut, 0 or more
 * @param length the same in the weaver's units
 * @param widths the same as a number of reference widths, in halves; empty for a band, which is no yarn to be measured out
 * @param shared said where one yarn is shared into several butterflies, or what a band is cut longer for; else empty
 */
public record CutLine(
        Place place,
        String blockId,
        Optional<Yarn> yarn,
        String what,
        String strands,
        String role,
        String use,
        int step,
        int count,
        double mm,
        String length,
        String widths,
        String shared) {
    /** Whether it is for what is sewn to the finished piece, and so for neither end. */
    public boolean sewnOn() {
        return blockId.isEmpty();
    }

    /** “6½ ×”, or empty. */
    public String times() {
        return widths.isEmpty() ? "" : widths + " ×";
    }

    /** What to cut, and of a bundle its strands. */
    public String whatAndStrands() {
        return strands.isEmpty() ? what : what + " (" + strands + ")";
    }

    /** What to cut, and the part it plays. */
    public String whatAndRole() {
        return role.isEmpty() ? what : what + ", " + role;
    }
}
