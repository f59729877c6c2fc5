package thrumwright.plan;

/**
 * What is usual on a kind of loom for what becomes of the ends.
 *
 * @param below from the lower bar to where the weaving begins
 * @param above the top
 * @param perEnd warp yarn that one end takes, mm, more than 0
 * @param lost of it, what can't be woven, mm, 0 or more
 * @param behind of what is lost, what lies free above the top, mm, 0 or more
 */
public record UsualRoom(Free below, Free above, double perEnd, double lost, double behind) {
    /** Nothing of a warp end is lost but where it is tied. */
    UsualRoom(Free below, Free above, double perEnd) {
        this(below, above, perEnd, 0, 0);
    }

    /**
     * Warp that stays free.
     *
     * @param mm 0 or more
     */
    public record Free(double mm, Why why) {
        /** The larger of two. */
        Free or(Free other) {
            return other.mm > mm ? other : this;
        }
    }

    /** What it is for. */
    public enum Why {
        /** The ends' finish asks for it. */
        FINISH,
        /** The ends of a hem are tied in pairs. */
        HEM,
        /** Nothing but that the hands reach it: what is free lies at the back, or in what is lost. */
        REACH,
        /** Hands and needle at the top. */
        HANDS,
        /** Shed stick and leashes at the top. */
        LEASHES,
        /** What is lost on rollers is enough. */
        WASTE
    }
}
