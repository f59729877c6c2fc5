package thrumwright.piece;

/** How a loom's sheds are made. */
public enum Sheds {
    /** By needle and fingers, end by end. */
    FINGERS,
    /** One by a stick that lies in the warp, the other by string leashes that pull the ends behind it to the front. */
    STICK_AND_LEASHES,
    /** By a bar that is turned: it lies flat in one shed and stands on edge in the other. */
    ROTATING_BAR,
    /** By a heddle with slots and holes, raised and lowered. */
    HEDDLE;

    /** Whether a pick's shed is made for the whole width at once, so that it has a name. */
    public boolean named() {
        return this != FINGERS;
    }
}
