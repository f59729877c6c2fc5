package thrumwright.drawing.yarn;

import thrumwright.plan.OneLength;

/**
 * At which of its ends a block's yarn hangs loose.
 *
 * @param first where it begins
 * @param last where it ends
 */
record Hanging(boolean first, boolean last) {
    static final Hanging NOWHERE = new Hanging(false, false);

    /** What goes on from a neighbour, or into one, has no tail there. */
    static Hanging of(OneLength length) {
        return new Hanging(length.before().isEmpty(), length.after().isEmpty());
    }
}
