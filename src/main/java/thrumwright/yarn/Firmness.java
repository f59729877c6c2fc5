package thrumwright.yarn;

/**
 * How thick a yarn stays when it is beaten in, as a share of its relaxed diameter. Hard cord can't be squeezed. On each
 * rib of a soft weft that hides the warp every other pick shows, and the floats touch when two beaten picks are as tall
 * as one relaxed float.
 */
public enum Firmness {
    HARD(1.0),
    MEDIUM(0.75),
    SOFT(0.5);

    private final double share;

    Firmness(double share) {
        this.share = share;
    }

    /** Beaten thickness over relaxed diameter. */
    public double share() {
        return share;
    }
}
