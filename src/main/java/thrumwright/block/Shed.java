package thrumwright.block;

/** How a plain pick meets the first warp end from the left, whichever way the pick runs. */
public enum Shed {
    OVER_FIRST,
    UNDER_FIRST;

    public Shed other() {
        return this == OVER_FIRST ? UNDER_FIRST : OVER_FIRST;
    }

    /** Whether the pick passes in front of an end, counted from 0 at the left. */
    boolean over(int end) {
        return (end % 2 == 0) == (this == OVER_FIRST);
    }
}
