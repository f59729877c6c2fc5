package thrumwright.cord;

/** Which way a cord turns round a peg, seen from above with x to the right and z towards the top of the page. */
public enum Sense {
    /** With the peg on the right hand: over the front of the warp when it runs to the right. */
    CLOCKWISE(-1),
    /** With the peg on the left hand: behind the warp when it runs to the right. */
    ANTICLOCKWISE(1);

    private final int sign;

    Sense(int sign) {
        this.sign = sign;
    }

    /** +1 where angles grow along the cord, −1 where they shrink. */
    int sign() {
        return sign;
    }

    public Sense other() {
        return this == CLOCKWISE ? ANTICLOCKWISE : CLOCKWISE;
    }
}
