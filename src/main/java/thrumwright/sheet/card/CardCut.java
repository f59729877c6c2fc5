package thrumwright.sheet.card;

import java.util.Optional;
import thrumwright.yarn.Yarn;

/**
 * What to cut for a block.
 *
 * @param yarn empty for a band of cloth
 * @param letter by which the yarn is known on all cards of its piece, beside its colour; empty for a band
 * @param what it is called
 * @param length how much of it, and how many widths of the warp or the loom that is
 */
public record CardCut(Optional<Yarn> yarn, String letter, String what, String length) {}
