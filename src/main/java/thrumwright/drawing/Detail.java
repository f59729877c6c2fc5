package thrumwright.drawing;

/** How finely yarns are drawn: small ones need fewer points and less light. */
enum Detail {
    FINE(0.012),
    COARSE(0.08);

    /** From so many page units a yarn is drawn finely. */
    private static final double FINE_FROM = 5;

    private final double unseen;

    Detail(double unseen) {
        this.unseen = unseen;
    }

    /** @param thickness of the yarn, page units */
    static Detail of(double thickness) {
        return thickness >= FINE_FROM ? FINE : COARSE;
    }

    /** What the eye can't see, as a share of the yarn's diameter. */
    double unseen() {
        return unseen;
    }
}
