package thrumwright.block;

/** How a yarn passes a warp end: in front of it or behind. */
public enum Passing {
    OVER,
    UNDER;

    public Passing other() {
        return this == OVER ? UNDER : OVER;
    }
}
