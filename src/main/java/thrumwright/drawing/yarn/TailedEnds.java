package thrumwright.drawing.yarn;

import thrumwright.plan.OneLength;

/**
 * At which of its ends a block's yarn hangs loose.
 *
 * @param first where it begins
 * @param last where it ends
 */
record TailedEnds(boolean first, boolean last) {
    static final TailedEnds NOWHERE = new TailedEnds(false, false);

    boolean any() {
        return first || last;
    }

    /** What goes on from a neighbour, or into one, has no tail there. */
    static TailedEnds of(OneLength length) {
        return new TailedEnds(length.before().isEmpty(), length.after().isEmpty());
    }
}
