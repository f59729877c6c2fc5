package thrumwright.block;

/**
 * How a plain pick meets the left edge end, whichever way the pick runs. Words never say so: a weaver who begins at the
 * right takes the right edge end for the first, see {@link #meets}.
 */
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

    /**
     * How a pick in this shed meets the outermost end at a side: the left edge end as the shed says, the right one likewise
     * if the number of ends is odd, else the other way.
     *
     * @param ends number of warp ends, 1 or more
     */
    public Passing meets(Side side, int ends) {
        return over(side == Side.LEFT ? 0 : ends - 1) ? Passing.OVER : Passing.UNDER;
    }

    /** The shed in which a pick meets the outermost end at a side so. */
    public static Shed meeting(Passing passing, Side side, int ends) {
        return OVER_FIRST.meets(side, ends) == passing ? OVER_FIRST : UNDER_FIRST;
    }
}
