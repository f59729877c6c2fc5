package thrumwright.block;

/** A side of the weaving as the weaver sees it. */
public enum Side {
    LEFT,
    RIGHT;

    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
