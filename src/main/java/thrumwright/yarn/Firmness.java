package thrumwright.yarn;

/**
 * How thick a yarn stays when it is beaten in, as a share of its relaxed diameter. Hard cord can't be squeezed. On each
 * rib of a soft weft that hides the warp every other pick shows, and the floats touch when two beaten picks are as tall
 * as one relaxed float.
 */
public enum Firmness {
    HARD(1.0, 0.40),
    MEDIUM(0.75, 0.22),
    SOFT(0.5, 0.12);

    private final double share;
    private final double filling;

    Firmness(double share, double filling) {
        this.share = share;
        this.filling = filling;
    }

    /** Beaten thickness over relaxed diameter, a share of 0.5 to 1. */
    public double share() {
        return share;
    }

    /**
     * How much of the circle about a yarn as wound on a ruler is fibre, a share of 0.12 to 0.40. A cord of six plies fills 6 · 0.60 ÷ 3² = 0.40 of it
     * (derived from the packing of its plies); a soft wool by published tables of wraps and metres for 100 g 0.10 to 0.14; a medium
     * yarn lies between (from memory).
     */
    public double filling() {
        return filling;
    }
}
