package thrumwright.drawing.yarn;

import java.awt.Graphics2D;

/** How finely yarns are drawn: small ones need fewer points and less light. */
public enum Detail {
    FINE(0.012),
    COARSE(0.08);

    /** From so many device units a yarn is drawn finely. */
    private static final double FINE_FROM = 6;

    private final double unseen;

    Detail(double unseen) {
        this.unseen = unseen;
    }

    /** @param thickness of the yarn, device units */
    static Detail of(double thickness) {
        return thickness >= FINE_FROM ? FINE : COARSE;
    }

    /** Device units to a page unit: more than 1 on a dense screen or in a picture file. */
    static double device(Graphics2D g) {
        return Math.sqrt(Math.abs(g.getTransform().getDeterminant()));
    }

    /** What the eye can't see, as a share of the yarn's diameter. */
    double unseen() {
        return unseen;
    }
}
